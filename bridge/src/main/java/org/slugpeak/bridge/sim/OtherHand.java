package org.slugpeak.bridge.sim;

import java.util.SplittableRandom;
import org.slugpeak.core.receiver.SetOnBench;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/**
 * The hand at the generator: when it is asked to cut, it does so after a while, and the hand at the slug holds still meanwhile.
 * One thread at a time.
 */
final class OtherHand {

    private static final long HOLD_NANOS = 1_400_000_000L;
    private static final long STILL_BEFORE_NANOS = 500_000_000L;

    private final SetOnBench set;
    private final SimulatedHand hand;
    private final SplittableRandom random;
    private double factor = 1;
    private long dueNanos = Long.MAX_VALUE;
    private boolean obeys = true;

    OtherHand(SetOnBench set, SimulatedHand hand, SplittableRandom random) {
        this.set = set;
        this.hand = hand;
        this.random = random;
    }

    /** Whether it does what it is asked. */
    void obeys(boolean nowObeys) {
        obeys = nowObeys;
    }

    /** Something else is to be done at the generator: a prompt that was heard is forgotten. */
    void drop() {
        dueNanos = Long.MAX_VALUE;
    }

    void hear(SessionRecord record, long tNanos) {
        if (obeys && dueNanos == Long.MAX_VALUE && record instanceof Request.CutGenerator asked) {
            factor = asked.factor();
            dueNanos = tNanos + (long) (random.nextDouble(0.8, 1.4) * 1e9);
            hand.pauseFrom(dueNanos - STILL_BEFORE_NANOS, dueNanos + HOLD_NANOS);
        }
    }

    void step(long tNanos) {
        if (tNanos >= dueNanos) {
            dueNanos = Long.MAX_VALUE;
            set.feed(set.generator().times(factor));
        }
    }
}
