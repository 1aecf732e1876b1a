package org.slugpeak.core.peak.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The observer that the finder is compared with is as late, and as seldom wrong, as the theory of it says. */
class ObserverTest {

    private static final long FIRST_SEED = 5_100_000;

    @ParameterizedTest
    @CsvSource({
        "40, 170, 50, 0.0035",
        "40, 170, 50, 0.02",
        "40, 170, 200, 0.0035",
        "25, 26, 1000, 0.0035",
        "40, 170, 10, 0.0035"
    })
    void onWhiteNoiseItFlagsWhenTheFormulaSays(double speed, double halfWidth, double rate, double sigma) {
        Family family = new Family("", halfWidth, speed, rate, 0, Family.Law.CLEAN, Family.Habit.PLAIN);
        Sweep sweep = new Sweep("", family, Disturbance.white(sigma), Evidence.white(sigma));
        double median = Table.quantile(
                IntStream.range(0, 60)
                        .parallel()
                        .mapToDouble(i ->
                                Delay.of(sweep, FIRST_SEED + i, Watcher::finder).observerSeconds()),
                0.5);
        double expected = Observer.expectedSeconds(speed / halfWidth, rate, sigma, Observer.HOURS);
        assertEquals(expected, median, 0.1 * expected);
    }

    static Stream<Arguments> laws() {
        double sigma = 0.05;
        return Stream.of(
                Arguments.of("white", Disturbance.white(sigma), Evidence.white(sigma)),
                Arguments.of(
                        "rounded",
                        Disturbance.both(Disturbance.white(sigma), Disturbance.rounded(0.1)),
                        Evidence.rounded(sigma, 0.1)),
                Arguments.of(
                        "1/f",
                        Disturbance.both(Flicker.ofOctave(0.02), Disturbance.white(sigma)),
                        Coloured.of(sigma, Coloured.flicker(0.02, 40))),
                Arguments.of(
                        "hum",
                        Disturbance.both(Disturbance.tone(0.05, 2.3), Disturbance.white(sigma)),
                        Coloured.of(sigma, Coloured.tone(0.05, 2.3))));
    }

    /** The threshold is the mean number of readings to a false flag, and a little more for what it is overshot by. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("laws")
    void atRestItFalselyFlagsAsSeldomAsAskedFor(String name, Disturbance.Maker noise, Evidence.Law law) {
        double rate = 40;
        double[] seconds = IntStream.range(0, 200).mapToDouble(i -> i / rate).toArray();
        double[] means = new double[seconds.length];
        Arrays.fill(means, 1);
        double mean = IntStream.range(0, 200)
                .parallel()
                .mapToDouble(i -> {
                    Disturbance disturbance = noise.make(new SplittableRandom(FIRST_SEED + i), rate);
                    double[] values = Arrays.stream(seconds)
                            .map(s -> disturbance.read(s, 1))
                            .toArray();
                    Observer observer = new Observer(0.1, 50, seconds, law.of(seconds, values, means));
                    return Math.min(rate * observer.flagSeconds(0), seconds.length);
                })
                .average()
                .orElseThrow();
        assertTrue(mean > 45 && mean < 75, name + ": " + mean);
    }
}
