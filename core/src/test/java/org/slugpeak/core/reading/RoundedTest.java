package org.slugpeak.core.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class RoundedTest {

    @ParameterizedTest
    @ValueSource(doubles = {-0.0, 0.0, -0.049, 0.049, -1e-12})
    void whatWouldBeWrittenAsNothingHasNoMinus(double value) {
        assertEquals("+0.0", String.format(Locale.ROOT, "%+.1f", Rounded.to(value, 1)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.051, 0.051, -12.34, 7, Double.NEGATIVE_INFINITY})
    void everythingElseStaysAsItIs(double value) {
        assertEquals(value, Rounded.to(value, 1));
    }

    @Test
    void whatIsNotKnownStaysUnknown() {
        assertTrue(Double.isNaN(Rounded.to(Double.NaN, 2)));
    }
}
