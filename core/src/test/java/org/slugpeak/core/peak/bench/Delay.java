package org.slugpeak.core.peak.bench;

import java.util.SplittableRandom;
import java.util.stream.DoubleStream;

/**
 * How late one travel was told as passed.
 *
 * @param seconds after the top, infinite if never
 * @param observerSeconds the same of the ideal observer
 * @param early passes told before the top
 * @param evidence what the observer had seen when the finder told of it, in readings to a false flag
 */
record Delay(double seconds, double observerSeconds, int early, double evidence) {

    private static final double REST_SECONDS = 1;

    static Delay of(Sweep sweep, long seed, Watcher.Maker maker) {
        SplittableRandom random = new SplittableRandom(seed);
        Family family = sweep.family();
        double speed = family.speedDegreesPerSecond();
        double from = random.nextDouble(1.2, 3) * family.halfWidthDegrees();
        double beyond = random.nextDouble(1.2, 3) * family.halfWidthDegrees();
        double top = REST_SECONDS + from / speed;
        double[] seconds = times(family, random, top + beyond / speed);
        Disturbance noise = sweep.noise().make(random.split(), family.rate());
        double[] values = new double[seconds.length];
        double[] means = new double[seconds.length];
        for (int i = 0; i < seconds.length; i++) {
            double degrees = from - speed * Math.max(0, seconds[i] - REST_SECONDS);
            double level = Meter.truth(family, degrees);
            values[i] = noise.read(seconds[i], level);
            means[i] = degrees > 0 ? level : 1;
        }
        int first = (int) DoubleStream.of(seconds).filter(s -> s <= top).count();
        Evidence evidence = sweep.law().of(seconds, values, means);
        double flagsAt = 3600 * Observer.HOURS * sweep.readingsPerSecond();
        Observer observer = new Observer(speed / family.halfWidthDegrees(), flagsAt, seconds, evidence);
        Passes passes = new Passes(top);
        Watcher watcher = maker.make(passes);
        for (int i = 0; i < seconds.length; i++) {
            watcher.accept(Math.round(seconds[i] * 1e9), values[i]);
        }
        Observer.Watch watch = observer.watch(first, Math.min(passes.after, seconds[seconds.length - 1]));
        return new Delay(passes.after - top, watch.flagSeconds() - top, passes.early, watch.evidence());
    }

    private static double[] times(Family family, SplittableRandom random, double end) {
        Meter meter = new Meter(family, random.split());
        return DoubleStream.iterate(random.nextDouble() / family.rate(), t -> t < end, t -> t + meter.interval())
                .toArray();
    }

    /** How many times as late as the observer; NaN if neither told of it. */
    double ratio() {
        return seconds / observerSeconds;
    }

    private static final class Passes extends Ear {
        final double top;
        double after = Double.POSITIVE_INFINITY;
        int early;

        Passes(double top) {
            this.top = top;
        }

        @Override
        public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
            double now = tNanos / 1e9;
            if (now <= top) {
                early++;
            } else {
                after = Math.min(after, now);
            }
        }
    }
}
