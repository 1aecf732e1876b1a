package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the distributions of Apache Commons Math 3. */
class TailTest {

    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1e-4, 1e-5, 1e-7, 1e-9})
    void aNormalQuantileIsRightToOneAndAHalfPercent(double probability) {
        double exact = -new NormalDistribution().inverseCumulativeProbability(probability);
        assertEquals(exact, Tail.normal(probability), 0.015 * exact);
    }

    @ParameterizedTest
    @CsvSource({"1e-3, 3", "1e-3, 8", "1e-5, 6", "1e-5, 8", "1e-5, 30", "1e-7, 8", "1e-7, 30", "1e-7, 256"})
    void aStudentQuantileIsRightToFourPercent(double probability, double degrees) {
        double exact = -new TDistribution(degrees).inverseCumulativeProbability(probability);
        assertEquals(exact, Tail.student(Tail.normal(probability), degrees), 0.04 * exact);
    }
}
