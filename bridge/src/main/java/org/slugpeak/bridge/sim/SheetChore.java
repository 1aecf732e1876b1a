package org.slugpeak.bridge.sim;

import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.source.TypedWord;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.receiver.Generator;
import org.slugpeak.core.rehearsal.PlannedSet;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;

/**
 * Does at a set that was made up from a plan what a sheet asks for: sets generator, dial and volume, waits a moment, and says that it is
 * done. One thread at a time.
 */
final class SheetChore implements Chore {

    private static final long KNOB_NANOS = 700_000_000L;

    /** Until the reading stands, and a person believes it. */
    private static final long LOOK_NANOS = 1_500_000_000L;

    private record Due(long atNanos, Runnable what) {}

    private final PlannedSet set;
    private final Checks checks = new Checks();
    private final Queue<Due> due = new ArrayDeque<>();
    private Optional<TypedWord> word = Optional.empty();
    private boolean over;

    SheetChore(PlannedSet set) {
        this.set = set;
    }

    @Override
    public void begin(Bench bench, SourceListener listener) {
        set.feed(set.generator().withVolts(0));
    }

    @Override
    public void hear(SessionRecord record, Bench bench) {
        checks.hear(record, this::nothing, 0, bench);
        if (record instanceof Request.SetUp) {
            after(KNOB_NANOS, bench, () -> word = Optional.of(TypedWord.NEXT));
        } else if (record instanceof Request.SetInput it && it.unasked()) {
            set.feed(modulated(it.setting()));
        } else if (record instanceof Request.SetInput asked) {
            after(KNOB_NANOS, bench, () -> set(asked.setting()));
            after(KNOB_NANOS + LOOK_NANOS, bench, () -> finish(asked.setting()));
        }
        over = over || record instanceof SheetWork.SheetOver;
    }

    private Adjustable nothing() {
        return Adjustable.of(set.knob(set.scenes().get(0).step().adjuster()).orElseThrow());
    }

    private void after(long nanos, Bench bench, Runnable what) {
        due.add(new Due(bench.nowNanos() + nanos, what));
    }

    private void set(InputSetting wanted) {
        if (wanted.handwork() == Handwork.TUNE_SET) {
            set.connect(wanted.dialHz());
        }
        set.feed(modulated(wanted).withFrequency(wanted.frequencyHz()).withVolts(wanted.emfVolts()));
        switch (wanted.handwork()) {
            case TUNE_SET -> set.tuneIn();
            case TUNE_GENERATOR -> set.tuneGenerator();
            case NONE, TURN_VOLUME_DOWN -> {}
        }
    }

    /** A generator that obeys says itself where it stands, but not how it is modulated. */
    private Generator modulated(InputSetting wanted) {
        Generator own = set.generator();
        return new Generator(own.frequencyHz(), own.volts(), wanted.modulated(), Generator.Lead.AERIAL);
    }

    /** The volume is turned by what is read. */
    private void finish(InputSetting wanted) {
        if (wanted.handwork() == Handwork.TURN_VOLUME_DOWN) {
            set.turnVolumeTo(wanted.referenceVolts());
        }
        word = Optional.of(TypedWord.NEXT);
    }

    @Override
    public boolean step(Bench bench, SourceListener listener) {
        checks.step(bench, listener);
        while (!due.isEmpty() && due.peek().atNanos() <= bench.nowNanos()) {
            due.remove().what().run();
        }
        word.ifPresent(listener::typed);
        word = Optional.empty();
        return over;
    }
}
