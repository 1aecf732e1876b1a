package org.slugpeak.bridge.sim;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.receiver.Generator;
import org.slugpeak.core.receiver.SetOnBench;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/**
 * The bench: a set, meter, two hands, and what the operator has still to do. It lives in steps of 10 ms of its own time. Where the session sets
 * a generator, that one is connected from the first time it stands, whatever a hand does to the bench's own. One thread at a time.
 */
final class Bench implements RecordSink {

    /** One tick; short against every time constant of the model. */
    static final long TICK_NANOS = 10_000_000;

    private final SetOnBench set;
    private final SimulatedMeter meter;
    private final SimulatedHand hand;
    private final OtherHand other;
    private final Deque<Chore> chores;
    private final List<Caution.Suspected> suspicions = new ArrayList<>();
    private Optional<Request.GeneratorStands> fed = Optional.empty();
    private Optional<Chore> present = Optional.empty();
    private long nowNanos;

    Bench(SetOnBench set, SimulatedMeter meter, SimulatedHand hand, OtherHand other, List<Chore> chores) {
        this.set = set;
        this.meter = meter;
        this.hand = hand;
        this.other = other;
        this.chores = new ArrayDeque<>(chores);
        set.load(meter.totalOhm());
    }

    private void feed(Request.GeneratorStands it) {
        Generator own = set.generator();
        set.feed(own.withFrequency(it.hz()).withVolts(it.emfVolts()));
    }

    SetOnBench set() {
        return set;
    }

    OtherHand other() {
        return other;
    }

    MeterModel meter() {
        return meter.model();
    }

    /** Turns the meter's switch to AC or DC. */
    void turnMeterTo(Measurand wanted) {
        meter.turnTo(wanted);
    }

    /** Puts a resistor in series with the meter lead, or 0 to take it out. */
    void seriesResistor(double ohm) {
        meter.series(ohm);
        set.load(meter.totalOhm());
    }

    /** What was said to be possibly wrong, in order. */
    List<Caution.Suspected> suspicions() {
        return List.copyOf(suspicions);
    }

    long nowNanos() {
        return nowNanos;
    }

    boolean isOver() {
        return present.isEmpty() && chores.isEmpty();
    }

    /** One tick. Whether a reading came. */
    boolean tick(SourceListener listener) {
        nowNanos += TICK_NANOS;
        work(listener);
        hand.step(nowNanos);
        other.step(nowNanos);
        fed.ifPresent(this::feed);
        set.step(nowNanos);
        Optional<Reading> reading = meter.step(nowNanos, set);
        reading.ifPresent(listener::reading);
        return reading.isPresent();
    }

    private void work(SourceListener listener) {
        if (present.isPresent() && present.get().step(this, listener)) {
            present = Optional.empty();
        }
        if (present.isEmpty() && !chores.isEmpty()) {
            Chore next = chores.remove();
            present = Optional.of(next);
            next.begin(this, listener);
        }
    }

    @Override
    public void take(SessionRecord record) {
        if (record instanceof Request.GeneratorStands stands) {
            fed = Optional.of(stands);
        }
        if (record instanceof Caution.Suspected suspected) {
            suspicions.add(suspected);
        }
        hand.hear(record, nowNanos);
        other.hear(record, nowNanos);
        present.ifPresent(chore -> chore.hear(record, this));
    }
}
