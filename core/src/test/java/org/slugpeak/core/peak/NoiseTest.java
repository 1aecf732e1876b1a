package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.IntToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Blocks of 20 ms. */
class NoiseTest {

    private static final double BLOCK_SECONDS = 0.02;

    private final Pyramid pyramid = new Pyramid();
    private final Noise noise = new Noise();

    private void feed(int blocks, IntToDoubleFunction level) {
        for (int i = 0; i < blocks; i++) {
            pyramid.add(i, level.applyAsDouble(i));
            noise.add(pyramid, BLOCK_SECONDS);
        }
    }

    /** Its memory of 512 correlated deviations leaves about 6 percent. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0005, 0.01, 0.05})
    void whiteNoiseIsItsSigmaOverTheRootOfTheWindow(double sigma) {
        Gauss gauss = new Gauss(1);
        feed(4000, i -> 1 + sigma * gauss.next());
        for (int level = 0; level < Pyramid.OCTAVES; level++) {
            assertEquals(sigma / Math.sqrt(1 << level), noise.white(level, 1), 0.2 * sigma / Math.sqrt(1 << level));
        }
    }

    /** Third differences of level, slope and curvature are nothing; a resonance crossed in some seconds is hardly more. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0.001, 0", "-0.0005, 1e-6", "0, -1e-6"})
    void isBlindToLevelSlopeAndCurvature(double slope, double curvature) {
        feed(600, i -> 1 + slope * i + curvature * i * i);
        double level = pyramid.mean(0);
        assertEquals(1e-5 * Math.abs(level), noise.white(0, level), 1e-9);
    }

    @Test
    void isLearntWhileTurningAsAtRest() {
        Gauss gauss = new Gauss(2);
        feed(600, i -> 1 / Math.hypot(1, (i - 300) / 60.0) + 0.003 * gauss.next());
        assertEquals(0.003, noise.white(0, 0.5), 0.0006);
    }

    @Test
    void growingNoiseIsSeenWithinTwoSeconds() {
        Gauss gauss = new Gauss(3);
        feed(2000, i -> 1 + 0.001 * gauss.next());
        feed(200, i -> 1 + 0.003 * gauss.next());
        assertTrue(noise.white(0, 1) > 0.002);
    }

    @Test
    void aBeatIsSlowNoiseInTheWindowsThatShowIt() {
        feed(3000, i -> 1 + 0.002 * Math.sin(2 * Math.PI * 1.3 * BLOCK_SECONDS * i));
        assertTrue(noise.excess(4) > 0.0005, "excess " + noise.excess(4));
        assertTrue(noise.slowest(4, 1) > 0.0005);
        assertTrue(noise.excess(0) <= 0.01);
    }

    /** Whatever does not average away belongs to every sigma: half of the slow noise and the rounding of the last digit. */
    @Test
    void sigmaHoldsEverything() {
        feed(3000, i -> Math.rint(1000 * (1 + 0.004 * Math.sin(2 * Math.PI * 1.3 * BLOCK_SECONDS * i))) / 1000);
        for (int level = 0; level < Pyramid.OCTAVES; level++) {
            double sum = noise.white(level, 1) + Math.sqrt(1 / 12.0) * 0.001 + 0.5 * noise.excess(level);
            assertEquals(sum, noise.sigma(level, 1), 1e-9);
        }
        assertTrue(noise.sigma(4, 1) > noise.white(4, 1) + 0.0007);
    }

    @Test
    void whiteNoiseIsNotTakenForSlowNoise() {
        Gauss gauss = new Gauss(4);
        feed(4000, i -> 1 + 0.003 * gauss.next());
        for (int level = 0; level < 6; level++) {
            assertTrue(noise.excess(level) < 0.5 * noise.white(level, 1), "at level " + level);
        }
    }

    @Test
    void aHandThatTurnsIsNotSlowNoise() {
        feed(600, i -> 0.5 + 0.002 * i);
        assertEquals(0, noise.excess(1), 1e-6);
    }

    @Test
    void untilItIsKnownThereMayBeThreePercentOfSlowNoise() {
        feed(100, i -> 1);
        assertEquals(0.03, noise.slowest(0, 1));
        feed(60, i -> 1);
        assertEquals(0, noise.slowest(0, 1));
    }

    @Test
    void aShortRecordRaisesEveryThreshold() {
        feed(19, i -> 1);
        assertEquals(16, noise.seen());
        assertEquals(student(1e-7 + 3e-4 * 4 / (16 * 16), 8) / normal(1e-7), noise.margin(), 0.03);
        feed(800, i -> 1);
        assertEquals(512, noise.seen());
        assertEquals(student(1e-7 + 3e-4 * 4 / (512.0 * 512), 256) / normal(1e-7), noise.margin(), 0.01);
    }

    private static double student(double tail, double degrees) {
        return -new TDistribution(degrees).inverseCumulativeProbability(tail);
    }

    private static double normal(double tail) {
        return -new NormalDistribution().inverseCumulativeProbability(tail);
    }

    @Test
    void noMeterIsSteadierThanAPartInAHundredThousand() {
        feed(600, i -> 3);
        assertEquals(3e-5, noise.white(5, 3), 1e-12);
        assertEquals(0, noise.step());
    }

    @Test
    void blocksOfFourTimesTheReadingsHaveHalfTheNoise() {
        Gauss gauss = new Gauss(5);
        feed(1000, i -> 1 + 0.01 * gauss.next());
        double before = noise.white(0, 1);
        noise.rescale(0.5);
        assertEquals(before / 2, noise.white(0, 1), 1e-12);
    }

    @Test
    void whatWasRescaledStaysSo() {
        Gauss gauss = new Gauss(5);
        feed(1000, i -> 1 + 0.01 * gauss.next());
        noise.rescale(0.5);
        feed(10, i -> 1 + 0.005 * gauss.next());
        assertEquals(0.005, noise.white(0, 1), 0.0008);
    }

    @Test
    void afterAJumpItIsLearntAnew() {
        Gauss gauss = new Gauss(6);
        feed(1000, i -> 1 + 0.01 * gauss.next());
        noise.unsettle();
        assertEquals(0, noise.seen());
        feed(300, i -> 1 + 0.001 * gauss.next());
        assertEquals(0.001, noise.white(0, 1), 0.0003);
    }
}
