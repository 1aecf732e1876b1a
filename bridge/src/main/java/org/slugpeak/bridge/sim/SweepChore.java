package org.slugpeak.bridge.sim;

import java.util.Optional;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.TwoPeaks;

/**
 * Turns a slug at which somebody has been outwards, short of its stop, to see how many maxima it passes: one that stood at the wrong
 * end passes two. Then it goes back by counting turns. One thread at a time.
 */
final class SweepChore implements Chore {

    private static final double DEGREES_PER_SECOND = 240;
    private static final double OUTERMOST_TURNS = -5;

    /** A little outside the outer maximum. */
    private static final double OUTSIDE_TURNS = -0.7;

    private final SimulatedReceiver receiver;
    private final Part part;
    private double backToTurns;
    private boolean back;
    private boolean twoPeaks;

    SweepChore(SimulatedReceiver receiver, Part part) {
        this.receiver = receiver;
        this.part = part;
    }

    @Override
    public void begin(Bench bench, SourceListener listener) {
        backToTurns = receiver.turns(part);
        receiver.hand(Optional.of(part));
        listener.nextAdjuster(part.label() + ", outwards, counting turns");
    }

    @Override
    public void hear(SessionRecord record, Bench bench) {
        twoPeaks = twoPeaks || record instanceof TwoPeaks;
    }

    @Override
    public boolean step(Bench bench, SourceListener listener) {
        double target = back ? (twoPeaks ? OUTSIDE_TURNS : backToTurns) : OUTERMOST_TURNS;
        double turns = receiver.turns(part);
        double stride = DEGREES_PER_SECOND / 360 * Bench.TICK_NANOS / 1e9;
        if (Math.abs(target - turns) > stride) {
            receiver.set(part, turns + Math.copySign(stride, target - turns));
            return false;
        }
        if (!back) {
            back = true;
            return false;
        }
        receiver.hand(Optional.empty());
        return true;
    }
}
