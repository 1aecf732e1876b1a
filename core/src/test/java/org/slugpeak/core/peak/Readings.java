package org.slugpeak.core.peak;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.slugpeak.core.reading.Condition;

/** Feeds a finder with a level that depends on time, plus noise. */
final class Readings {

    private final PeakFinder finder;
    private final SplittableRandom random = new SplittableRandom(20261125);
    private final double rate;
    private final double noise;
    private double seconds;

    Readings(PeakFinder finder, double rate, double noise) {
        this.finder = finder;
        this.rate = rate;
        this.noise = noise;
    }

    /** A resonance of height one, passed in its middle at {@code topSeconds}, its half-width taking {@code halfSeconds}. */
    static DoubleUnaryOperator resonance(double topSeconds, double halfSeconds) {
        return t -> 1 / Math.hypot(1, (t - topSeconds) / halfSeconds);
    }

    Readings follow(double forSeconds, DoubleUnaryOperator levelAtSeconds) {
        double begin = seconds;
        long count = Math.round(forSeconds * rate);
        for (long i = 1; i <= count; i++) {
            seconds = begin + i / rate;
            read(levelAtSeconds.applyAsDouble(seconds));
        }
        return this;
    }

    Readings rest(double forSeconds, double level) {
        return follow(forSeconds, t -> level);
    }

    Readings read(double level) {
        double gaussian =
                Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
        finder.accept(nanos(), level + noise * gaussian, Condition.OK);
        return this;
    }

    Readings skip(double forSeconds) {
        seconds += forSeconds;
        return this;
    }

    double seconds() {
        return seconds;
    }

    long nanos() {
        return Math.round(seconds * 1e9);
    }
}
