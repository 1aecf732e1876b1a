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
        return new Rocking(job, new SweepMeter(job::straightMagnitude));
    }

    @Override
    public PlanPhase reading(ReadingTaken it) {
        OptionalDouble sweep = sweeps.see(job.nowNanos(), it.reading().value());
        return sweep.isPresent() ? swept(sweep.getAsDouble()) : this;
    }

    private PlanPhase swept(double greatest) {
        double belowDb = Decibels.of(greatest / sweeps.best());
        job.say(at -> new Work.Swept(at, belowDb));
        if (!sweeps.isAtOptimum()) {
            return this;
        }
        job.say(at -> new Request.HandsOff(at, true));
        return Ending.swept(job, Decibels.of(sweeps.best() / sweeps.first()));
    }
}
