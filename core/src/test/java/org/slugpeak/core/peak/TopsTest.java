package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.peak.Watched.below;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heights are in parts of the best. */
class TopsTest {

    private final Told told = new Told();
    private final Watched level = new Watched();
    private final Best best = new Best(level.blocks.front);
    private final Tops tops = new Tops(told, new Orientation(Seek.PEAK));

    /** The hand goes over a top of this height, behind a bottom. */
    private boolean lowerTop(double height, double bottom) {
        best.recall(new Best.Mark(Watched.VOLTS, 0, 0));
        level.by(t -> best.top().look(level.sight.level.value()));
        level.rest(1, height);
        level.by(t -> {});
        level.rest(1, bottom);
        return tops.lower(level.nowNanos(), best, Watched.VOLTS * bottom);
    }

    @Test
    void aLowerTopBehindADipIsToldWithTheDepthOfTheDip() {
        assertTrue(lowerTop(0.8, 0.8 * below(2)));
        assertEquals(0.8 * Watched.VOLTS, told.first("two-peaks").value(), 1e-4);
        assertEquals(2, told.first("two-peaks").db(), 1e-3);
        assertEquals(level.nowNanos(), told.first("two-peaks").tNanos());
    }

    @ParameterizedTest
    @CsvSource({"0.28, false", "0.32, true"})
    void aDipOfLessThanThreeTenthsIsAHandThatDithers(double dipDb, boolean isTold) {
        assertEquals(isTold, lowerTop(0.8, 0.8 * below(dipDb)));
        assertEquals(isTold ? 1 : 0, told.all.size());
    }

    @ParameterizedTest
    @CsvSource({"0.28, 1", "0.32, 2", "-0.28, 1", "-0.32, 2"})
    void aLowerTopThatIsMetAgainIsToldOnce(double lowerByDb, int times) {
        lowerTop(0.8, 0.5);
        lowerTop(0.8 * below(lowerByDb), 0.5);
        assertEquals(times, told.count("two-peaks"), told.all.toString());
    }

    @Test
    void theNextAdjusterHasTopsOfItsOwn() {
        lowerTop(0.8, 0.5);
        tops.restart();
        assertTrue(lowerTop(0.8, 0.5));
        tops.higher(0.6, 0.3);
        tops.restart();
        tops.passed(5, 1);
        assertEquals(2, told.all.size(), told.all.toString());
    }

    /** A hand that obeys turns back before it has fallen by three decibels. */
    @Test
    void aHigherTopIsAnotherOneWhereTheDipIsDeep() {
        assertFalse(tops.higher(0.6, 0.6 * below(2.9)));
        tops.passed(5, 1);
        assertEquals(0, told.all.size());
        assertTrue(tops.higher(0.6, 0.6 * below(3.1)));
        tops.passed(6, 1);
        tops.passed(7, 1);
        assertEquals(1, told.count("two-peaks"), "told when the second one is passed, and once");
        assertEquals(6, told.first("two-peaks").tNanos());
        assertEquals(1, told.first("two-peaks").value());
        assertEquals(3.1, told.first("two-peaks").db(), 1e-9, "below the lower of the two");
    }

    /** What a dwell lets pass, 0.15 dB, is 0.0171 of the best. */
    @ParameterizedTest
    @CsvSource({"1, 0.017, true", "1, 0.0173, false", "1, -0.5, true", "-2, 0.034, true", "-2, 0.0346, false"})
    void aTopIsAsGoodAsTheBestWhereNoDwellWouldTellThemApart(double height, double missing, boolean same) {
        best.recall(new Best.Mark(height, 0, 0));
        assertEquals(same, tops.isTheSame(best, missing));
    }

    @Test
    void bottomsOfADipAreToldAsTheyWereRead() {
        Tops bottoms = new Tops(told, new Orientation(Seek.DIP));
        bottoms.higher(-0.6, -1.2);
        bottoms.passed(3, -0.4);
        assertEquals(0.4, told.first("two-peaks").value());
    }
}
