package org.slugpeak.core.peak.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the bench spoils readings with is what its names say. */
class DisturbanceTest {

    private static double[] read(Disturbance.Maker maker, double rate, int readings) {
        Disturbance disturbance = maker.make(new SplittableRandom(5_000_000), rate);
        double[] values = new double[readings];
        for (int i = 0; i < readings; i++) {
            values[i] = disturbance.read(i / rate, 1) - 1;
        }
        return values;
    }

    private static double rms(double... values) {
        return Math.sqrt(Arrays.stream(values).map(v -> v * v).average().orElseThrow());
    }

    /** Standard deviation of the difference of neighbouring means of so many readings. */
    private static double allan(double[] values, int length) {
        int means = values.length / length;
        double[] differences = new double[means - 1];
        double before = Double.NaN;
        for (int i = 0; i < means; i++) {
            double mean = Arrays.stream(values, i * length, (i + 1) * length)
                    .average()
                    .orElseThrow();
            if (i > 0) {
                differences[i - 1] = mean - before;
            }
            before = mean;
        }
        return rms(differences) / Math.sqrt(2);
    }

    @Test
    void whiteNoiseHasItsSigma() {
        assertEquals(0.0035, rms(read(Disturbance.white(0.0035), 50, 200_000)), 0.00003);
    }

    @Test
    void aBeatHasItsAmplitude() {
        assertEquals(0.01 / Math.sqrt(2), rms(read(Disturbance.beat(0.01, 0.3), 50, 200_000)), 0.0001);
    }

    /**
     * The Allan deviation of 1/f noise of the one-sided spectrum h/f is sqrt(2 ln 2 h), whatever the averaging time (Allan, Proc. IEEE 54
     * (1966) 221; IEEE Std 1139, table of power laws; from memory). Here h is the variance of an octave over ln 2.
     */
    @ParameterizedTest
    @ValueSource(doubles = {10, 50, 1000})
    void flickerHasTheSameSpectrumAtEveryRate(double rate) {
        double[] values = read(Flicker.ofOctave(0.002), rate, 1 << 21);
        for (double seconds : new double[] {1, 4, 16}) {
            assertEquals(
                    Math.sqrt(2) * 0.002,
                    allan(values, (int) (seconds * rate)),
                    0.0004,
                    seconds + " s at " + rate + "/s");
        }
    }

    @Test
    void flickerHasTheSameVarianceInEveryOctave() {
        double expected = 0.002 * Math.sqrt(Flicker.octaves(50));
        assertEquals(expected, rms(read(Flicker.ofOctave(0.002), 50, 1 << 21)), 0.1 * expected);
    }

    @Test
    void humThatTheRateDividesBeatsSlowlyAndAtFullAmplitude() {
        double[] values = read(Mains.of(0.01, 50), 10, 360_000);
        assertEquals(0.01 / Math.sqrt(2), rms(values), 0.0007);
        assertTrue(allan(values, 1) < 0.0003, "from reading to reading");
    }

    @Test
    void popcornStandsOnTwoLevelsAboutAsLongOnEach() {
        double[] values = read(Popcorn.of(0.003), 50, 1_800_000);
        assertTrue(Arrays.stream(values).allMatch(v -> Math.abs(Math.abs(v) - 0.0015) < 1e-12));
        assertEquals(0, Arrays.stream(values).average().orElseThrow(), 0.0003);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.003, 0.01})
    void theLastDigitFlickersAndNothingElseDoes(double digit) {
        double[] values = read(Disturbance.lastDigit(digit), 10, 10_000);
        double[] seen = Arrays.stream(values)
                .map(v -> Math.rint((v + 1) / digit))
                .distinct()
                .sorted()
                .toArray();
        assertEquals(2, seen.length);
        assertEquals(1, seen[1] - seen[0]);
    }

    @Test
    void spikesComeAsOftenAsSaid() {
        double[] values = read(Disturbance.spikes(0.005, Disturbance.white(0)), 50, 200_000);
        assertEquals(0.005, Arrays.stream(values).filter(v -> v != 0).count() / 200_000.0, 0.0005);
    }
}
