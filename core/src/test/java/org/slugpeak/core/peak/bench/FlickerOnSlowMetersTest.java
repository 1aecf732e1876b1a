package org.slugpeak.core.peak.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What can be had of a slow meter in 1/f noise of 0.4 percent an octave: an ideal observer that knows curve, height, speed and spectrum, and
 * that is in half of the runs as early as the finder, is wrong at rest how often? The figures stand in docs/peak-finder.md.
 */
class FlickerOnSlowMetersTest {

    private static final double OCTAVE = 0.004;
    private static final long FIRST_SEED = 65_900_000;
    private static final int TRAVELS = 250;
    private static final int RESTS = 40;

    @ParameterizedTest
    @CsvSource({"5, 40, 0.85, 1.48, 11800", "2, 200, 1.29, 1.55, 60"})
    void anObserverAsEarlyAsTheFinderIsWrongSoOftenInTenHours(
            double rate, int readingsOfARest, double finderSeconds, double idealSeconds, double wrong) {
        Sweep sweep = Sweep.flicker(Sweep.slug("", rate, Family.Law.CLEAN), OCTAVE);
        List<Delay> delays = IntStream.range(0, TRAVELS)
                .parallel()
                .mapToObj(i -> Delay.of(sweep, FIRST_SEED + i, Watcher::finder))
                .toList();
        assertNear(finderSeconds, median(delays, Delay::seconds), 1.25);
        assertNear(idealSeconds, median(delays, Delay::observerSeconds), 1.25);
        double[] untilWrong = IntStream.range(0, RESTS)
                .parallel()
                .mapToDouble(i -> readingsUntilWrong(sweep, median(delays, Delay::evidence), readingsOfARest, i))
                .toArray();
        double flags =
                DoubleStream.of(untilWrong).filter(n -> n < readingsOfARest).count();
        double inTenHours = 36_000 * rate * flags / DoubleStream.of(untilWrong).sum();
        assertNear(wrong, inTenHours, 3);
    }

    private static double median(List<Delay> delays, ToDoubleFunction<Delay> what) {
        return Table.quantile(delays.stream().mapToDouble(what), 0.5);
    }

    private static double readingsUntilWrong(Sweep sweep, double flagsAt, int readings, int rest) {
        Family family = sweep.family();
        double[] seconds =
                IntStream.range(0, readings).mapToDouble(i -> i / family.rate()).toArray();
        double[] means = new double[readings];
        Arrays.fill(means, 1);
        Disturbance noise = sweep.noise().make(new SplittableRandom(FIRST_SEED + rest), family.rate());
        double[] values = Arrays.stream(seconds).map(s -> noise.read(s, 1)).toArray();
        double speed = family.speedDegreesPerSecond() / family.halfWidthDegrees();
        Observer observer = new Observer(speed, flagsAt, seconds, sweep.law().of(seconds, values, means));
        return Math.min(readings, 1 + family.rate() * observer.flagSeconds(0));
    }

    private static void assertNear(double expected, double actual, double factor) {
        assertTrue(actual > expected / factor && actual < expected * factor, expected + " expected, but " + actual);
    }
}
