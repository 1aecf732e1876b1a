package org.slugpeak.core.level;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Condition;

/** A meter in front of the watch: 50 readings a second with a little noise. */
final class Meter {

    static final double NOISE = 0.0035;

    final Told told = new Told();
    final LevelWatch watch = new LevelWatch(Seek.PEAK, told);
    private final SplittableRandom random;
    private final double noise;
    private long tNanos;

    Meter(long seed, double noise) {
        this.random = new SplittableRandom(seed);
        this.noise = noise;
    }

    double seconds() {
        return tNanos / 1e9;
    }

    /** Reads for a while; the voltage may follow the seconds since the call. */
    Meter read(double seconds, DoubleUnaryOperator volts) {
        double from = seconds();
        while (seconds() - from < seconds) {
            tNanos += 20_000_000L;
            double clean = volts.applyAsDouble(seconds() - from);
            watch.accept(tNanos, clean * (1 + noise * random.nextGaussian()), Condition.OK);
        }
        return this;
    }

    Meter read(double seconds, double volts) {
        return read(seconds, at -> volts);
    }

    Meter command(LevelCommand command) {
        watch.command(tNanos, command);
        return this;
    }

    Meter done() {
        return command(LevelCommand.done());
    }

    /** The rest check as a user makes it. */
    Meter rest(double signal, double rest) {
        return command(LevelCommand.check(CheckKind.REST))
                .read(2, signal + rest)
                .read(3, rest)
                .read(2, signal + rest);
    }

    /** The level check as a user makes it, before a set whose output follows the generator with this slope. */
    Meter level(double volts, double slope) {
        double fallDb = slope * Decibels.of(2);
        return halvings(volts, fallDb, fallDb);
    }

    /** The level check as a user makes it who looks at what he is asked for. */
    Meter halvings(double volts, double firstDb, double secondDb) {
        double halved = volts / Decibels.ratio(firstDb);
        command(LevelCommand.check(CheckKind.LEVEL)).read(2, volts).read(3, halved);
        if (told.all("ask").size() > 1 && told.all("ask").get(1).amount() == 1) {
            read(3, halved / Decibels.ratio(secondDb));
        }
        return read(2, volts);
    }
}
