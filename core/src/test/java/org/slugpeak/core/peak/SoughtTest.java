package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.core.word.Refused;

/** What holds of whatever may be sought, and the table of those there are. */
class SoughtTest {

    @ParameterizedTest
    @EnumSource(Seek.class)
    void isFoundAgainByItsWord(Seek seek) throws Refused {
        assertEquals(seek, Seek.ofCode(seek.code()));
    }

    @Test
    void anyOtherWordIsRefused() {
        assertThrows(Refused.class, () -> Seek.ofCode("PEAK"));
    }

    @ParameterizedTest
    @CsvSource({"PEAK, RISING, false, true", "DIP, FALLING, false, false", "ZERO, FALLING, true, false"})
    void eachHasAWayThatIsNearer(Seek seek, Trend nearer, boolean signCounts, boolean strongest) {
        assertEquals(nearer, seek.nearer());
        assertEquals(signCounts, seek.signCounts());
        assertEquals(strongest, seek.seeksStrongest());
    }

    @ParameterizedTest
    @EnumSource(Seek.class)
    void nearerAndAwayAreOppositeMovements(Seek seek) {
        assertNotEquals(seek.nearer(), seek.away());
        assertNotEquals(Trend.STEADY, seek.nearer());
        assertNotEquals(Trend.STEADY, seek.away());
    }

    @Property
    void aReadingThatWentTheWayThatIsNearerIsBetter(
            @ForAll Seek seek,
            @ForAll @DoubleRange(max = 1e9) double before,
            @ForAll @DoubleRange(max = 1e9) double after) {
        double better = seek.better(after, before);
        Trend went = after > before ? Trend.RISING : after < before ? Trend.FALLING : Trend.STEADY;
        assertEquals(better > 0, went == seek.nearer());
        assertEquals(better < 0, went == seek.away());
        assertEquals(0, better + seek.better(before, after));
    }

    @Property
    void whatIsBetterThanTheBestLiesANegativeDistanceFromIt(
            @ForAll Seek seek, @ForAll @DoubleRange(min = 1e-9, max = 1e9) @Scale(9) double ofBest) {
        double distanceDb = seek.distanceDb(ofBest);
        if (seek.signCounts()) {
            assertTrue(Double.isNaN(distanceDb));
        } else {
            assertEquals(seek.better(ofBest, 1) > 0, distanceDb < 0);
            assertEquals(-distanceDb, seek.distanceDb(1 / ofBest), 1e-9);
        }
    }

    @ParameterizedTest
    @EnumSource(Seek.class)
    void withoutABestThereIsNoDistance(Seek seek) {
        assertTrue(Double.isNaN(seek.distanceDb(Double.NaN)));
    }

    @ParameterizedTest
    @CsvSource({"RISING, rising", "FALLING, falling", "STEADY, steady"})
    void aWayIsRecordedByItsWord(Trend way, String word) {
        assertEquals(word, way.code());
    }
}
