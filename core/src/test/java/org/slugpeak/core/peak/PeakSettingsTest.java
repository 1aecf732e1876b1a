package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.word.Refused;

class PeakSettingsTest {

    @Test
    void usuallyAPeakIsHeldAfterTwoSeconds() {
        assertEquals(new PeakSettings(Seek.PEAK, Duration.ofSeconds(2)), PeakSettings.defaults());
    }

    @Test
    void oneIsChangedAndTheOtherStays() {
        PeakSettings settings = PeakSettings.defaults().withSeek(Seek.DIP).withDwell(Duration.ofMillis(1));
        assertEquals(new PeakSettings(Seek.DIP, Duration.ofMillis(1)), settings);
        assertEquals(new PeakSettings(Seek.ZERO, Duration.ofMillis(1)), settings.withSeek(Seek.ZERO));
    }

    @ParameterizedTest
    @ValueSource(strings = {"PT0S", "PT-1S"})
    void aDwellHasToTakeTime(String dwell) {
        PeakSettings settings = PeakSettings.defaults();
        Duration none = Duration.parse(dwell);
        assertThrows(IllegalArgumentException.class, () -> settings.withDwell(none));
    }

    /** So long that no count of nanoseconds holds it: nothing is ever held. */
    @Test
    void aDwellMayBeEndless() {
        Told told = new Told();
        PeakFinder finder =
                PeakFinder.create(PeakSettings.defaults().withDwell(Duration.ofSeconds(Long.MAX_VALUE)), told);
        new Readings(finder, 50, 0.000_5)
                .rest(1, Readings.resonance(8, 3).applyAsDouble(1))
                .follow(8.5, Readings.resonance(8, 3))
                .follow(1.5, Readings.resonance(11, 3))
                .rest(60, 1);
        assertEquals(1, told.count("returned"));
        assertEquals(0, told.count("held"));
    }

    @ParameterizedTest
    @EnumSource
    void whatIsSoughtIsFoundByItsWord(Seek seek) throws Refused {
        assertEquals(seek, Seek.ofCode(seek.code()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Peak", "summit"})
    void anotherWordIsRefusedWithThoseThatThereAre(String word) {
        String message = assertThrows(Refused.class, () -> Seek.ofCode(word)).reason();
        assertTrue(message.contains("peak, dip, zero"), message);
    }
}
