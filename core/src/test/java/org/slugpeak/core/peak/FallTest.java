package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slugpeak.core.peak.Watched.below;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a level has to fall to be told as a pass, by what has been told before. The best is 0.3 V; there is no noise. */
class FallTest {

    private static final double VOLTS = 0.3;

    private final Told told = new Told();
    private final PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);
    private final Readings meter = new Readings(finder, 50, 0);

    private void follow(double seconds, DoubleUnaryOperator level) {
        double begin = meter.seconds();
        meter.follow(seconds, t -> VOLTS * level.applyAsDouble(t - begin));
    }

    private void riseToTheTop() {
        follow(2, t -> below(0.6 * (t - 2) * (t - 2)));
    }

    /** From the top, faster and faster, and there it stays. */
    private void fall(double db) {
        follow(1, t -> below(db * t * t));
        follow(2, t -> below(db));
    }

    private void passAndReturn() {
        riseToTheTop();
        fall(2);
        follow(2, t -> below(0.5 * (t - 2) * (t - 2)));
        follow(0.2, t -> 1);
        assertEquals(1, told.count("returned"), told.all.toString());
        told.all.clear();
    }

    @ParameterizedTest
    @CsvSource({"0.045, 0", "0.06, 1", "1, 1"})
    void atFirstAFallOfATwentiethOfADecibelIsToldAndLessIsNot(double db, int passes) {
        riseToTheTop();
        fall(db);
        assertEquals(passes, told.count("passed"));
    }

    /** So small a loss is good enough for who has come back. */
    @ParameterizedTest
    @CsvSource({"0.15, 0", "0.22, 1"})
    void afterAReturnAFallOfAFifthOfADecibelIs(double db, int passes) {
        passAndReturn();
        fall(db);
        assertEquals(passes, told.count("passed"), told.all.toString());
    }

    @Test
    void theNextAdjusterBeginsWithATwentiethAgain() {
        passAndReturn();
        finder.restart();
        follow(0.5, t -> below(2.4));
        riseToTheTop();
        fall(0.06);
        assertEquals(1, told.count("passed"));
    }

    /** Down and up within a third of a second, five seconds after the one before. */
    private void dip(double part) {
        follow(5, t -> 1);
        follow(0.3, t -> 1 - part * (1 - Math.abs(t - 0.15) / 0.15));
        follow(1, t -> 1);
    }

    @Test
    void aDipThatWasTakenForAPassIsToldAgainOnlyWhereItIsHalfAsDeepAgain() {
        riseToTheTop();
        dip(0.02);
        assertEquals(1, told.count("passed"), told.all.toString());
        assertEquals(1, told.count("reversed"), told.all.toString());
        dip(0.02);
        assertEquals(1, told.count("passed"), "as deep as the first");
        dip(0.045);
        assertEquals(2, told.count("passed"), "more than twice as deep");
    }

    /** A hand that turns back at a word has seen deeper ones: the level may dip by 0.75 dB, 8.3 percent, and no more. */
    @Test
    void aFallOfThreeQuartersOfADecibelIsAlwaysTold() {
        riseToTheTop();
        dip(0.07);
        assertEquals(1, told.count("reversed"), told.all.toString());
        fall(1);
        assertEquals(2, told.count("passed"), told.all.toString());
    }

    @Test
    void theBestIsReachedFromBelow() {
        assertEquals(Double.NaN, finder.belowBestDb());
        riseToTheTop();
        assertEquals(0, finder.belowBestDb(), 0.01);
        fall(3);
        assertEquals(3, finder.belowBestDb(), 0.01);
        follow(1, t -> below(3 - 3 * t));
        follow(2, t -> 1 + 0.02 * t);
        assertEquals(0, finder.belowBestDb());
    }
}
