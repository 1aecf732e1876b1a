package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.function.LongToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.decibel.Decibels;

/**
 * How well the best goes on where a prompt to halve the generator is obeyed by hand: by 4.4 to 8 dB, 0.7 to 1.5 s after the prompt;
 * 50 readings a second with 0.1 percent of noise. What is told of it in docs/generators.md is held here.
 */
class HandTurnsTest {

    private static final int SEEDS = 200;

    /** None by which anything was chosen. */
    private static final long FIRST_SEED = 1_470_000;

    private static final double TOP_VOLTS = 1.6;
    private static final double LOOK_SECONDS = 0.1;

    /** What the finder's scale misses at one place of the adjuster, dB; NaN where the turn was not noticed. */
    private static double missedDb(
            long seed, double halfWidthsPerSecond, double longestTurnSeconds, boolean announced) {
        SplittableRandom random = new SplittableRandom(seed);
        double peakSeconds = 3 + random.nextDouble(-1, 3);
        DoubleUnaryOperator level = at -> TOP_VOLTS / Math.hypot(1, halfWidthsPerSecond * (at - peakSeconds));
        Meter meter = new Meter(seed, 0.001).command(LevelCommand.at(MeterPoint.DETECTOR));
        double begin = 0;
        for (; !meter.told.heard("cut-generator"); begin += LOOK_SECONDS) {
            double from = begin;
            meter.read(LOOK_SECONDS, at -> level.applyAsDouble(from + at));
        }
        double prompted = begin;
        if (announced) {
            meter.command(LevelCommand.cut(0.5));
        }
        double reaction = random.nextDouble(0.7, 1.5);
        meter.read(reaction, at -> level.applyAsDouble(prompted + at));
        double turned = prompted + reaction;
        double before = meter.watch.toFinder(level.applyAsDouble(turned));
        double changeDb = -random.nextDouble(4.4, 8);
        double turnSeconds = random.nextDouble(0.1, longestTurnSeconds);
        meter.read(
                turnSeconds + 2,
                at -> level.applyAsDouble(turned + at) * Decibels.ratio(changeDb * Math.min(1, at / turnSeconds)));
        double after = meter.watch.toFinder(level.applyAsDouble(turned) * Decibels.ratio(changeDb));
        return meter.told.heard("generator-changed") ? Math.abs(Decibels.of(after / before)) : Double.NaN;
    }

    @ParameterizedTest(name = "{0} half widths a second, turned within {1} s")
    @CsvSource({
        "0, 0.2, 200, 0.02, 0.05",
        "0.1, 0.2, 200, 0.1, 0.2",
        "0.25, 0.2, 200, 0.1, 0.2",
        "0, 0.6, 195, 0.02, 0.05",
        "0.25, 0.6, 190, 0.1, 0.2"
    })
    void theBestGoesOnAcrossThePrompt(
            double halfWidthsPerSecond, double longestTurnSeconds, int noticed, double of95Db, double mostDb) {
        double[] missed = missedDb(seed -> missedDb(seed, halfWidthsPerSecond, longestTurnSeconds, false));
        assertTrue(missed.length >= noticed, () -> "noticed " + missed.length);
        double of95 = missed[missed.length * 95 / 100];
        assertTrue(of95 <= of95Db, () -> "95 of 100: " + of95);
        assertTrue(missed[missed.length - 1] <= mostDb, () -> "at the most " + missed[missed.length - 1]);
    }

    /** Whoever announces it may take his time. */
    @ParameterizedTest(name = "{0} half widths a second, turned within {1} s")
    @CsvSource({"0, 1.2, 0.02, 0.05", "0, 2, 0.02, 1"})
    void theBestGoesOnAcrossASlowTurnThatIsAnnounced(
            double halfWidthsPerSecond, double longestTurnSeconds, double of95Db, double mostDb) {
        double[] missed = missedDb(seed -> missedDb(seed, halfWidthsPerSecond, longestTurnSeconds, true));
        assertEquals(SEEDS, missed.length);
        assertTrue(missed[missed.length * 95 / 100] <= of95Db);
        assertTrue(missed[missed.length - 1] <= mostDb);
    }

    private static double[] missedDb(LongToDoubleFunction ofSeed) {
        return LongStream.range(FIRST_SEED, FIRST_SEED + SEEDS)
                .mapToDouble(ofSeed)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
    }
}
