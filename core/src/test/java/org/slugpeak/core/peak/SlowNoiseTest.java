package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What does not average away; everything is in parts of the level. */
class SlowNoiseTest {

    private static final double VOLTS = 0.3;
    private static final double FAST_SECONDS = 0.02;

    private final Pyramid pyramid = new Pyramid();
    private final SlowNoise slow = new SlowNoise();
    private final Gauss gauss = new Gauss(5);
    private long blocks;

    private void feed(double blockSeconds, double seconds, double white, IntToDoubleFunction level) {
        for (int i = 0; i < seconds / blockSeconds; i++) {
            pyramid.add(blocks++, VOLTS * (level.applyAsDouble(i) + white * gauss.next()));
            slow.add(pyramid, blockSeconds, VOLTS * Math.max(white, 1e-5));
            slow.lasted(blockSeconds * blocks);
        }
    }

    private double excess(int level) {
        return slow.excess(level) / VOLTS;
    }

    private double reach(int level) {
        return slow.reach(level, VOLTS) / VOLTS;
    }

    /** So much in every octave from 0.04 s to 160 s: renewed half as often in each (Voss's method). */
    private IntToDoubleFunction flicker(double anOctave) {
        double[] octaves = new double[13];
        long[] drawn = {0};
        return i -> {
            octaves[Math.min(Long.numberOfTrailingZeros(++drawn[0]), octaves.length - 1)] = gauss.next();
            double sum = 1;
            for (double octave : octaves) {
                sum += anOctave * octave;
            }
            return sum;
        };
    }

    private static IntToDoubleFunction wave(double part, double hertz, double blockSeconds) {
        return i -> 1 + part * Math.sin(2 * Math.PI * hertz * blockSeconds * i);
    }

    /** In hours it takes a mean 16 to 19 times as far as an octave holds (simulated, docs/peak-finder.md). */
    @ParameterizedTest
    @ValueSource(doubles = {0.000_5, 0.001, 0.002})
    void flickerReachesFarAndInMeansOfEveryLength(double anOctave) {
        feed(FAST_SECONDS, 400, 0, flicker(anOctave));
        for (int level = 0; level < Pyramid.OCTAVES; level++) {
            assertTrue(reach(level) >= 8 * anOctave && reach(level) <= 24 * anOctave, level + ": " + reach(level));
        }
    }

    /** Twice as much white noise in a single block is taken off as the square of it. */
    @Test
    void flickerUnderWhiteNoiseReachesAsFar() {
        double anOctave = 0.001;
        feed(FAST_SECONDS, 600, 2 * anOctave, flicker(anOctave));
        assertTrue(reach(8) >= 12 * anOctave && reach(8) <= 24 * anOctave, "reach " + reach(8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.000_2, 0.005})
    void whiteNoiseHasNoFlicker(double white) {
        feed(FAST_SECONDS, 200, white, i -> 1);
        for (int level = 0; level < Pyramid.OCTAVES; level++) {
            assertEquals(3 * excess(level), reach(level), 1e-12);
            assertTrue(excess(level) < 0.3 * white, level + ": " + excess(level));
        }
    }

    /** It stands out in one or two lengths of means only, and goes no further than three sigma. */
    @ParameterizedTest
    @ValueSource(doubles = {1.3, 3})
    void aBeatHasNoFlicker(double hertz) {
        feed(FAST_SECONDS, 100, 0, wave(0.002, hertz, FAST_SECONDS));
        for (int level = 0; level < Pyramid.OCTAVES; level++) {
            assertEquals(3 * excess(level), reach(level), 1e-12);
        }
        assertTrue(reach(1) > 0.002, "as far as it goes: " + reach(1));
    }

    @Test
    void flickerIsStillKnownAfterSecondsAndForgottenAfterMinutes() {
        feed(FAST_SECONDS, 200, 0, flicker(0.001));
        double known = reach(8);
        feed(FAST_SECONDS, 2, 0, i -> 1);
        assertTrue(reach(8) > 0.5 * known);
        feed(FAST_SECONDS, 600, 0, i -> 1);
        assertTrue(reach(8) < 0.1 * known, reach(8) + " of " + known);
    }

    /** More than one percent is the hand. */
    @Test
    void noSlowNoiseIsLargerThanAPercent() {
        feed(FAST_SECONDS, 100, 0, wave(0.05, 1.3, FAST_SECONDS));
        assertEquals(0.01, excess(4), 1e-9 + 0.000_5);
        feed(FAST_SECONDS, 400, 0, flicker(0.02));
        assertTrue(reach(4) <= 22 * 0.010_5, "reach " + reach(4));
    }

    @Test
    void whatIsSlowerThanASecondIsDrift() {
        feed(FAST_SECONDS, 100, 0, wave(0.002, 1.3, FAST_SECONDS));
        assertTrue(excess(5) > 0);
        assertEquals(0, excess(6));
    }

    @Test
    void onASlowMeterMeansOfSixteenReadingsAreLookedAtToo() {
        feed(0.5, 2000, 0, wave(0.000_5, 0.07, 0.5));
        assertTrue(excess(4) > 0);
        assertEquals(0, excess(5));
    }

    /** A hand that turns a little, rests, and turns on: the corners are no noise. */
    @Test
    void aHandThatStartsAndStopsHasNone() {
        feed(FAST_SECONDS, 120, 0, i -> 1 + 0.01 * (Math.floorDiv(i, 200) + Math.min(1, (i % 200) / 100.0)));
        for (int level = 0; level < Pyramid.OCTAVES; level++) {
            assertTrue(excess(level) < 0.000_15, level + ": " + excess(level));
        }
    }

    @Test
    void aHandThatTurnsFarHasNone() {
        feed(FAST_SECONDS, 60, 0, i -> 1 / Math.hypot(1, (i - 1500) / 150.0));
        for (int level = 2; level < Pyramid.OCTAVES; level++) {
            assertTrue(excess(level) < 0.001, level + ": " + excess(level));
        }
    }

    @Test
    void beforeTwoSecondsItMayBeThreePercent() {
        feed(FAST_SECONDS, 1.98, 0, i -> 1);
        assertEquals(0.03, reach(0), 1e-12);
        assertEquals(0.03, slow.reach(0, -VOLTS) / VOLTS, 1e-12);
        feed(FAST_SECONDS, 0.04, 0, i -> 1);
        assertEquals(0, reach(0), 1e-6);
    }
}
