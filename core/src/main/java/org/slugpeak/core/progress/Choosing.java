package org.slugpeak.core.progress;

import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.ReadingTaken;

/**
 * One of two maxima is held. Staying chooses it; whoever turns on goes on where the turning was left.
 *
 * @param turning what was left
 * @param sinceNanos when it was held, nanoseconds from the first reading
 */
record Choosing(Turning turning, long sinceNanos) implements AtAdjuster {

    /** Staying so long on one of two maxima chooses it. */
    private static final long CHOOSE_NANOS = 10_000_000_000L;

    static Choosing begin(Turning turning) {
        turning.job().say(Guard.Choice::new);
        return new Choosing(turning, turning.job().nowNanos());
    }

    @Override
    public Job job() {
        return turning.job();
    }

    @Override
    public PlanPhase reading(ReadingTaken it) {
        if (!job().lastSecond().isSteady()) {
            return turning;
        }
        return job().nowNanos() - sinceNanos >= CHOOSE_NANOS ? HandsOff.begin(job()) : this;
    }

    @Override
    public PlanPhase verdict() {
        return new Choosing(turning.verdict(), sinceNanos);
    }
}
