package org.slugpeak.core.progress;

import java.util.OptionalDouble;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Work;

/**
 * The adjuster is turned while the gang is swept to and fro: no single maximum counts, but the greatest sweep.
 *
 * @param sweeps compares the sweeps
 */
record Rocking(Job job, SweepMeter sweeps) implements InHand {

    static Rocking begin(Job job) {
        return new Rocking(job, new SweepMeter());
    }

    @Override
    public PlanPhase reading(ReadingTaken it) {
        OptionalDouble sweep = sweeps.see(job.nowNanos(), it.reading().value());
        return sweep.isPresent() ? swept(sweep.getAsDouble(), it.reading().value()) : this;
    }

    private PlanPhase swept(double greatest, double read) {
        double belowDb = apartDb(sweeps.best(), greatest, read);
        job.say(at -> new Work.Swept(at, belowDb));
        if (!sweeps.isAtOptimum()) {
            return this;
        }
        job.say(at -> new Request.HandsOff(at, true));
        return Ending.swept(job, apartDb(sweeps.first(), sweeps.best(), read));
    }

    /** From one magnitude as read to another, both of the sign of what is read now. */
    private double apartDb(double from, double to, double read) {
        double before = job.scale().straight(Math.copySign(from, read));
        return Decibels.of(Math.abs(job.scale().straight(Math.copySign(to, read)) / before));
    }
}
