package org.slugpeak.core.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.decibel.Decibels;

/**
 * Held against two critically coupled pairs of Q 70 at 455 kHz: {@code 20 lg(1 + x^4/4)}, {@code x = 2 Q df/f} (Terman, Radio Engineers'
 * Handbook, 1943, section 3, from memory), whose inverse is worked out here.
 */
class SelectivityCurveTest {

    private static final double HZ_FOR_ONE = 455e3 / (2 * 70);

    private static double lossDb(double offHz) {
        return Decibels.of(1 + Math.pow(offHz / HZ_FOR_ONE, 4) / 4);
    }

    private static double widthHz(double lossDb) {
        return 2 * HZ_FOR_ONE * Math.pow(4 * (Decibels.ratio(lossDb) - 1), 0.25);
    }

    private static SelectivityCurve curve(double stepHz, int steps) {
        SelectivityCurve curve = new SelectivityCurve();
        for (int i = 1; i <= steps; i++) {
            curve.take(i * stepHz, lossDb(i * stepHz), 0.05);
            curve.take(-i * stepHz, lossDb(-i * stepHz), 0.05);
        }
        return curve;
    }

    @ParameterizedTest
    @ValueSource(doubles = {6, 20, 40})
    void findsTheWidthsOfTwoPairsWithinAHundredth(double lossDb) {
        double trueHz = widthHz(lossDb);
        assertEquals(trueHz, curve(2e3, 20).width(lossDb).orElseThrow().hz(), 0.01 * trueHz);
    }

    @Test
    void knowsAWidthAsWellAsTheSkirtsAreSteep() {
        double sigmaHz = curve(2e3, 12).width(20).orElseThrow().sigmaHz();
        double dbPerHz = (lossDb(8.5e3) - lossDb(7.5e3)) / 1e3;
        assertEquals(0.05 * Math.sqrt(2) / dbPerHz, sigmaHz, 0.2 * sigmaHz);
    }

    @Test
    void hasNoWidthWhereASideDoesNotFallSoFar() {
        assertEquals(Optional.empty(), curve(2e3, 3).width(20));
        assertEquals(Optional.empty(), new SelectivityCurve().width(6));
    }

    @Test
    void expectsASkirtToGoOnAsItFalls() {
        SelectivityCurve curve = curve(2e3, 4);
        double expected = curve.expectedDb(10e3);
        assertEquals(lossDb(10e3), expected, 2);
        assertTrue(expected > lossDb(8e3));
    }
}
