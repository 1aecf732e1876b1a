package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The universal resonance curve: F. E. Terman, Radio Engineers' Handbook, 1943, section 3. */
class SingleTunedTest {

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.9806, 11.31", "0.2, 0.9285, 21.80", "0.25, 0.8944, 26.57", "0.3, 0.8575, 30.96", "0.4, 0.7809, 38.66",
        "0.5, 0.7071, 45.00", "0.6, 0.6402, 50.19", "0.8, 0.5300, 57.99", "1, 0.4472, 63.43", "1.5, 0.3162, 71.57",
        "2, 0.2425, 75.96", "2.5, 0.1961, 78.69", "3, 0.1644, 80.54", "4, 0.1240, 82.87", "5, 0.0995, 84.29"
    })
    void followsTheUniversalResonanceCurve(double a, double ratio, double lagDegrees) {
        assertEquals(ratio, SingleTuned.universal(a).abs(), 5e-5);
        assertEquals(-lagDegrees, Math.toDegrees(SingleTuned.universal(a).getArgument()), 0.005);
    }

    @ParameterizedTest
    @CsvSource({"445e3, 0.21949", "450e3, 0.41225", "460e3, 0.41602", "465e3, 0.22412"})
    void theExactFormIsNotQuiteSymmetrical(double frequencyHz, double expected) {
        assertEquals(expected, new SingleTuned(455e3, 100).response(frequencyHz).abs(), 5e-6);
    }

    @Test
    void halfPowerEdgesLieFZeroOverQApart() {
        SingleTuned circuit = new SingleTuned(455e3, 100);
        assertEquals(4550, circuit.bandwidthHz());
        assertEquals(Math.sqrt(0.5), circuit.response(452730.687).abs(), 1e-7);
        assertEquals(Math.sqrt(0.5), circuit.response(457280.687).abs(), 1e-7);
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 0.643594", "3, 0.509825", "4, 0.434979", "5, 0.385614", "6, 0.349946"})
    void equalStagesInCascadeShrinkTheBand(int stages, double factor) {
        assertEquals(factor, SingleTuned.shrinkage(stages), 1e-6);
    }
}
