package org.slugpeak.core.progress;

import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;

/**
 * More signal is asked for before the detector's law is measured: its steps lead down from where the reading is going to stand, since
 * what lies above the first of them is known worst.
 *
 * @param watch tells when the generator has been turned up
 */
record Raising(Job job, SettlingWatch watch) implements PlanPhase {

    /** Less than where less signal is asked for. */
    private static final double OF_WINDOW = 0.8;

    /** So near is near enough; whoever has turned it up may have stopped a little short. */
    private static final double ENOUGH = 0.75;

    /** By which power of the signal a valve diode reads in its window: between 1.2 and 2 (shared/reference/detector/levels.csv). */
    private static final double USUAL_EXPONENT = 1.5;

    /** The law at once where the reading is high enough, or nobody knows how high it may be. */
    static PlanPhase thenLaw(Job job) {
        double wanted = OF_WINDOW * job.route().step().setup().highVolts();
        double riseVolts = job.riseVolts();
        double ratio = wanted / Math.abs(riseVolts);
        if (!Double.isFinite(ratio) || ratio <= 1 / ENOUGH) {
            return law(job);
        }
        double factor = Math.pow(ratio, 1 / USUAL_EXPONENT);
        double toReading = job.scale().rest() + Math.copySign(wanted, riseVolts);
        job.say(at -> new Request.CutGenerator(at, factor, toReading));
        double now = job.lastSecond().mean();
        return new Raising(job, new SettlingWatch(job.nowNanos(), now, true, false));
    }

    private static PlanPhase law(Job job) {
        return Checking.begin(job, CheckKind.DETECTOR_LAW, Settling::again);
    }

    @Override
    public PlanPhase reading(ReadingTaken it) {
        return watch.isDone(job.nowNanos(), it.smoothed(), false) ? law(job) : this;
    }

    @Override
    public PlanPhase next() {
        return law(job);
    }

    @Override
    public PlanPhase skip() {
        return job.preliminaries().next(job);
    }
}
