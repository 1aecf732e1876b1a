package org.slugpeak.core.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;

/**
 * The spread of the readings against the Cramer-Rao bounds of a real sinusoid in white noise: sd(A) >= sqrt(2 / N) sigma,
 * sd(omega) >= sqrt(24 sigma^2 / (A^2 N (N^2 - 1))), with amplitude, phase and frequency all unknown. D. C. Rife and
 * R. R. Boorstyn, Single-Tone Parameter Estimation from Discrete-Time Observations, IEEE Trans. IT-20 (1974) 591, who give
 * them for complex samples; a real record has twice the variance (checked by Monte Carlo in shared/reference).
 */
class CramerRaoTest {

    private static final double RATE_HZ = 48_000;
    private static final double RESPONSE_SECONDS = 0.1;
    private static final int READINGS = 1500;

    static double amplitudeBound(double sigma, double n) {
        return Math.sqrt(2 / n) * sigma;
    }

    static double frequencyBoundHz(double amplitude, double sigma, double n, double rateHz) {
        return Math.sqrt(24 * sigma * sigma / (amplitude * amplitude * n * (n * n - 1))) * rateHz / (2 * Math.PI);
    }

    @Test
    void theBoundsAreThePublishedOnes() {
        assertEquals(0.00447214, amplitudeBound(0.1, 1000), 1e-8);
        assertEquals(0.0197250, frequencyBoundHz(1, 0.1, 1000, 8000), 1e-7);
    }

    @Test
    void atZeroDecibelsInTheAudioBandLevelAndFrequencySpreadLessThanOneAndAHalfTimesTheBound() {
        double amplitude = 0.1;
        double sigma = amplitude / Math.sqrt(2);
        double n = RESPONSE_SECONDS * RATE_HZ;
        SplittableRandom random = new SplittableRandom(20);
        double[] level = new double[READINGS];
        double[] pitch = new double[READINGS];
        for (int i = 0; i < READINGS; i++) {
            double hz = random.nextDouble(300, 1100);
            Heard heard = Heard.of(
                    RATE_HZ,
                    Signal.at(RATE_HZ)
                            .sine(hz, amplitude, random.nextDouble(6.28))
                            .noise(sigma, random.nextLong())
                            .seconds(0.125));
            level[i] = heard.last().fs();
            pitch[i] = heard.quality().toneHz() - hz;
        }
        double levelRatio = new StandardDeviation().evaluate(level) / amplitudeBound(sigma, n);
        double pitchRatio = new StandardDeviation().evaluate(pitch) / frequencyBoundHz(amplitude, sigma, n, RATE_HZ);
        assertTrue(levelRatio < 1.5, () -> "level: " + levelRatio);
        assertTrue(pitchRatio < 1.5, () -> "frequency: " + pitchRatio);
        // Nothing honest can beat the bound by more than the scatter of a standard deviation.
        assertTrue(levelRatio > 0.95 && pitchRatio > 0.95, () -> levelRatio + " and " + pitchRatio);
    }
}
