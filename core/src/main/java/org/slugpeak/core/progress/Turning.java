package org.slugpeak.core.progress;

import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.TwoPeaks;

/**
 * The adjuster is turned until the finder says that it is held.
 *
 * @param stuck notices that nobody turns any more
 * @param twoPeaks whether this travel had two maxima
 */
record Turning(Job job, StuckWatch stuck, boolean twoPeaks) implements InHand {

    static Turning begin(Job job) {
        return new Turning(job, new StuckWatch(), false);
    }

    @Override
    public PlanPhase reading(ReadingTaken it) {
        return switch (stuck.see(job.nowNanos(), it.smoothed())) {
            case NOTHING -> this;
            case TELL -> stillShort(it.ofBest());
            case BEGIN_AGAIN -> beginAgain();
        };
    }

    private PlanPhase stillShort(double ofBest) {
        double missingDb = Math.abs(Decibels.of(ofBest));
        job.say(at -> new Guard.StillShort(at, Double.isFinite(missingDb) ? missingDb : Double.NaN));
        return this;
    }

    @Override
    public Turning verdict() {
        stuck.verdict();
        return this;
    }

    @Override
    public PlanPhase held() {
        return twoPeaks ? Choosing.begin(this) : HandsOff.begin(job);
    }

    @Override
    public PlanPhase twoPeaks(TwoPeaks it) {
        job.say(at -> new Guard.TwoMaxima(at, it.dipDb()));
        return new Turning(job, stuck, true);
    }
}
