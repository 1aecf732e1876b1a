package org.slugpeak.bridge.sim;

import java.util.List;
import java.util.Optional;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.SessionRecord;

/** Sets one adjuster, with the simulated hand or with the user's, and notes what came of it. One thread at a time. */
final class AdjusterChore implements Chore {

    private static final long TOOL_NANOS = 300_000_000L;

    /** Long enough to read that it is held; chosen. */
    private static final long AFTER_HELD_NANOS = 1_500_000_000L;

    private final SimulatedReceiver receiver;
    private final Part part;
    private final Turner turner;
    private final List<DemoOutcome.Step> steps;
    private double lossBeforeDb;
    private long toolInNanos;
    private boolean begun;
    private Optional<Long> heldNanos = Optional.empty();

    /** Turns a part and says when it has done. */
    interface Turner {

        void begin(Adjustable part, Bench bench);

        boolean isFinished();

        /** A while after the adjuster was held: whoever does not see to that goes on by it. */
        default void afterHeld() {}
    }

    AdjusterChore(SimulatedReceiver receiver, Part part, Turner turner, List<DemoOutcome.Step> steps) {
        this.receiver = receiver;
        this.part = part;
        this.turner = turner;
        this.steps = steps;
    }

    @Override
    public void begin(Bench bench, SourceListener listener) {
        lossBeforeDb = receiver.lossDb();
        receiver.hand(Optional.of(part));
        toolInNanos = bench.nowNanos();
    }

    @Override
    public boolean step(Bench bench, SourceListener listener) {
        if (!begun) {
            // The tool alone moves the circuit: the adjuster begins when that is over.
            if (bench.nowNanos() - toolInNanos >= TOOL_NANOS) {
                begun = true;
                listener.adjusterEnded(Adjuster.Action.DONE);
                listener.nextAdjuster(part.label());
                turner.begin(Adjustable.of(receiver, part), bench);
            }
            return false;
        }
        if (heldNanos
                .filter(held -> bench.nowNanos() - held >= AFTER_HELD_NANOS)
                .isPresent()) {
            turner.afterHeld();
        }
        if (!turner.isFinished()) {
            return false;
        }
        note();
        return true;
    }

    @Override
    public void hear(SessionRecord record, Bench bench) {
        if (record instanceof Held) {
            heldNanos = Optional.of(bench.nowNanos());
        }
    }

    private void note() {
        if (part.isSlug()) {
            steps.add(new DemoOutcome.Step(part.label(), lossBeforeDb - receiver.lossDb(), receiver.lossDb(part)));
        }
    }
}
