package org.slugpeak.cli.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UncertainTest {

    @ParameterizedTest
    @CsvSource({
        "1.0534, 0.0231, 1.05 +- 0.02",
        "1.0534, 0.0131, 1.053 +- 0.013",
        "455.0123, 0.08, 455.01 +- 0.08",
        "67.4, 3.2, 67 +- 3",
        "67.4, 12, 67 +- 12",
        "1, 0, 1.00000 +- 0.00001",
        "455, 0, 455.000 +- 0.001",
        "0, 0.004, 0.000 +- 0.004",
        "-0.6613, 0.0008, -0.6613 +- 0.0008"
    })
    void thePlacesAreThoseOfTheUncertaintyWhichIsNeverNil(double value, double sigma, String expected) {
        assertEquals(expected, Uncertain.text(value, sigma));
    }
}
