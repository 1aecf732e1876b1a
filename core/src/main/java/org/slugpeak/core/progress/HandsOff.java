package org.slugpeak.core.progress;

import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Work;

/**
 * The hand is to leave; then the reading is compared with what it was before.
 *
 * @param sinceNanos when it was asked to, nanoseconds from the first reading
 * @param withHand mean of the second before, above rest, as a straight detector would show it
 */
record HandsOff(Job job, long sinceNanos, double withHand) implements AtAdjuster {

    /** Time to take the hand away. */
    private static final long LEAVE_NANOS = 1_500_000_000L;

    /** A hand that changes the reading by more than this is reported, dB. */
    private static final double HAND_DB = 0.2;

    static HandsOff begin(Job job) {
        job.say(at -> new Request.HandsOff(at, false));
        return new HandsOff(job, job.nowNanos(), job.lastSecondStraight().mean());
    }

    @Override
    public PlanPhase reading(ReadingTaken it) {
        return job.nowNanos() - sinceNanos < LEAVE_NANOS + Job.COMPARE_NANOS ? this : compare();
    }

    private PlanPhase compare() {
        double changeDb = Decibels.of(job.lastSecondStraight().mean() / withHand);
        if (Math.abs(changeDb) > HAND_DB && job.route().step().goal().hasDecibels()) {
            job.say(at -> new Work.HandEffect(at, changeDb));
        }
        return Ending.order(job, Adjuster.Action.DONE);
    }
}
