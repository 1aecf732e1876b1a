package org.slugpeak.bridge.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;

class HumRejectionTest {

    private static final long MILLISECOND = 1_000_000;

    @Test
    void aThousandthOfTheHumLeftIsSixtyDecibels() {
        HumRejection rejection = new HumRejection(6.3);
        for (int i = 0; i < 10_000; i++) {
            double left = 0.0063 * Math.sqrt(2) * Math.sin(2 * Math.PI * 0.01 * i);
            rejection.reading(Reading.of(i * MILLISECOND, -1 + left));
        }
        assertEquals(60, rejection.decibels().orElseThrow(), 1e-6);
    }

    /** A mean over T leaves |sin(pi f T) / (pi f T)| of a sine: of 50 Hz over 16.664 ms, 15.9 dB down. */
    @Test
    void aMeanOverTheWrongMainsPeriodRejectsAsItsFormulaSays() {
        double windowSeconds = 0.016664;
        double passes = Math.sin(Math.PI * 50 * windowSeconds) / (Math.PI * 50 * windowSeconds);
        HumRejection rejection = new HumRejection(1);
        for (int i = 0; i < 100_000; i++) {
            double left = passes * Math.sqrt(2) * Math.sin(2 * Math.PI * 50 * i / 1234.5);
            rejection.reading(Reading.of(i * MILLISECOND, left));
        }
        assertEquals(-20 * Math.log10(passes), rejection.decibels().orElseThrow(), 1e-3);
    }

    @Test
    void readingsThatAreNotTrustedDoNotCount() {
        HumRejection rejection = new HumRejection(1);
        rejection.reading(Reading.of(0, 1));
        rejection.reading(Reading.of(1, 3));
        OptionalDouble before = rejection.decibels();
        rejection.reading(Reading.without(2, Condition.OVER_RANGE));
        assertEquals(before, rejection.decibels());
        assertEquals(0, before.orElseThrow(), 1e-12);
    }

    @Test
    void nothingIsKnownBeforeTwoReadingsOrWhereNothingIsLeft() {
        HumRejection rejection = new HumRejection(1);
        assertEquals(OptionalDouble.empty(), rejection.decibels());
        rejection.reading(Reading.of(0, 5));
        assertEquals(OptionalDouble.empty(), rejection.decibels());
        rejection.reading(Reading.of(1, 5));
        assertEquals(OptionalDouble.empty(), rejection.decibels());
    }

    @Test
    void noHumMeasuresNothing() {
        assertThrows(IllegalArgumentException.class, () -> new HumRejection(0));
        assertThrows(IllegalArgumentException.class, () -> new HumRejection(Double.NaN));
    }
}
