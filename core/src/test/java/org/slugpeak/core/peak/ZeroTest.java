package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A discriminator that swings to 2 V on one side, at 50 readings a second with a little noise. */
class ZeroTest {

    private static final double SWING = 2;

    private final Told told = new Told();
    private final PeakFinder finder = PeakFinder.create(PeakSettings.defaults().withSeek(Seek.ZERO), told);
    private final Readings meter = new Readings(finder, 50, 0.000_2);

    /** Evenly to a part of the swing. */
    private void turn(double from, double to, double seconds) {
        double begin = meter.seconds();
        meter.follow(seconds, t -> SWING * (from + (to - from) * (t - begin) / seconds));
    }

    private void rest(double part, double seconds) {
        meter.rest(seconds, SWING * part);
    }

    private void cross() {
        rest(1, 1);
        turn(1, -0.2, 3);
    }

    @ParameterizedTest
    @CsvSource({"-0.008, 0", "-0.012, 1", "-0.5, 1"})
    void isPassedWhereAHundredthOfTheSwingStandsOnTheOtherSide(double to, int passes) {
        rest(1, 1);
        turn(1, to, 3);
        rest(to, 1);
        assertEquals(passes, told.count("passed"));
    }

    @Test
    void isPassedWhereTheSignChanged() {
        cross();
        assertEquals(List.of("passed"), told.words());
        assertEquals(0, told.first("passed").value());
        double crossedSeconds = 1 + 3 / 1.2;
        assertEquals(crossedSeconds, told.first("passed").atNanos() / 1e9, 0.05);
        assertEquals(crossedSeconds, finder.bestAtNanos() / 1e9, 0.05);
        assertEquals(0, finder.best());
        assertEquals(0.000_2, finder.bestSigma(), 0.000_2);
    }

    @Test
    void isUnknownUntilItIsPassedAndAfterARestart() {
        rest(1, 1);
        assertTrue(Double.isNaN(finder.best()));
        assertTrue(Double.isNaN(finder.bestSigma()));
        turn(1, -0.2, 3);
        finder.restart();
        assertTrue(Double.isNaN(finder.best()));
        assertTrue(Double.isNaN(finder.bestSigma()));
        rest(-0.2, 3);
        assertEquals(1, told.count("passed"), "the side of the adjuster before means nothing");
    }

    @Test
    void isThereAndHeldAfterTheDwell() {
        cross();
        turn(-0.2, 0, 1.5);
        rest(0, 3);
        assertEquals(List.of("passed", "returned", "held"), told.words());
        double dwelt = (told.first("held").tNanos() - told.first("returned").tNanos()) / 1e9;
        assertTrue(dwelt >= 2 && dwelt < 3, "held after " + dwelt + " s");
        assertEquals(0, told.first("held").value(), 0.001);
        assertTrue(Double.isNaN(told.first("held").db()));
    }

    /** At 0.133 of the swing a second, a hand that needs 0.3 s to stop has to hear of it 0.04 before. */
    @Test
    void theReturnIsToldInTimeToStop() {
        cross();
        turn(-0.2, 0, 1.5);
        assertEquals(1, told.count("returned"));
        assertEquals(-0.04, told.first("returned").value() / SWING, 0.012);
    }

    /** A hand that turned back at once has to make good half of it, however fast it comes. */
    @Test
    void noReturnIsToldBeforeHalfOfTheWayBack() {
        rest(1, 1);
        turn(1, -0.05, 3);
        rest(-0.05, 1);
        turn(-0.05, 0, 0.3);
        assertEquals(List.of("passed", "returned"), told.words());
        assertEquals(-0.025, told.first("returned").value() / SWING, 0.006);
    }

    @Test
    void whoCreepsIsThereWithinAHundredth() {
        cross();
        turn(-0.2, -0.07, 1);
        rest(-0.07, 1);
        assertEquals(0, told.count("returned"));
        turn(-0.07, 0, 7);
        assertEquals(1, told.count("returned"));
        assertEquals(-0.01, told.first("returned").value() / SWING, 0.003);
    }

    /** Within two hundredths it may rest; from six on it is stopped short, and has to come back once more. */
    @ParameterizedTest
    @CsvSource({"-0.015, 1, 1", "-0.03, 0, 1", "-0.08, 0, 2"})
    void isHeldOnlyNearIt(double restsAt, int held, int returns) {
        cross();
        turn(-0.2, 0, 1.5);
        turn(0, restsAt, 0.1);
        rest(restsAt, 4);
        assertEquals(held, told.count("held"), told.all.toString());
        turn(restsAt, 0, 1);
        rest(0, 0.4);
        assertEquals(returns, told.count("returned"), told.all.toString());
    }

    /** After the return the hand may be off by three hundredths. */
    @ParameterizedTest
    @CsvSource({"0.025, 1", "0.04, 2"})
    void isPassedAgainWhereTheHandOvershoots(double to, int passes) {
        cross();
        turn(-0.2, 0, 1.5);
        turn(0, to, 0.5);
        rest(to, 0.5);
        assertEquals(passes, told.count("passed"));
    }

    @Test
    void aGapBeginsTheDwellAnew() {
        cross();
        turn(-0.2, 0, 1.5);
        rest(0, 1.5);
        finder.gap();
        rest(0, 1.5);
        assertEquals(0, told.count("held"));
        rest(0, 1);
        assertEquals(1, told.count("held"));
    }

    @Test
    void aNullWithoutAChangeOfSignIsDeadAndToldOnce() {
        rest(1, 1);
        turn(1, 0, 2);
        rest(0, 1.5);
        assertEquals(List.of(), told.words());
        rest(0, 10);
        assertEquals(List.of("dead-zero"), told.words());
        finder.restart();
        rest(1, 1);
        turn(1, 0, 2);
        rest(0, 5);
        assertEquals(2, told.count("dead-zero"));
    }

    @Test
    void besideTheNullNothingIsDead() {
        rest(1, 1);
        turn(1, 0.03, 2);
        rest(0.03, 10);
        assertEquals(List.of(), told.words());
    }

    @Test
    void leadsThatAreChangedOverPassNothing() {
        rest(1, 2);
        rest(-1, 3);
        assertEquals(List.of(), told.words());
        turn(-1, 0.2, 3);
        assertEquals(List.of("passed"), told.words());
    }

    /** The generator is off: nothing but 0.2 mV of noise about nothing, in forty beginnings of half a minute. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 5, 10, 50, 200, 1000})
    void whereThereIsNoSignalThereIsNoZero(double rate) {
        for (int seed = 0; seed < 40; seed++) {
            Gauss gauss = new Gauss(seed);
            PeakFinder other = PeakFinder.create(PeakSettings.defaults().withSeek(Seek.ZERO), told);
            new Readings(other, rate, 0).follow(30, t -> 0.000_2 * gauss.next());
            assertEquals(List.of(), told.words(), "seed " + seed);
            assertTrue(Double.isNaN(other.best()));
        }
    }

    @Test
    void aSwingThatCameAfterTheNoiseIsPassedAsSoonAsAnyOther() {
        rest(0, 20);
        cross();
        assertEquals(List.of("passed"), told.words());
        assertEquals(20 + 1 + 3 / 1.2, told.first("passed").tNanos() / 1e9, 0.1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, -1})
    void theTrendIsThatOfTheMagnitude(double side) {
        rest(0.5 * side, 1);
        turn(0.5 * side, side, 1);
        assertEquals(Trend.RISING, finder.trend());
        turn(side, 0.5 * side, 1);
        assertEquals(Trend.FALLING, finder.trend());
        rest(0.5 * side, 4);
        assertEquals(Trend.STEADY, finder.trend());
        assertEquals(0.5 * side * SWING, finder.smoothed(), 0.001);
    }
}
