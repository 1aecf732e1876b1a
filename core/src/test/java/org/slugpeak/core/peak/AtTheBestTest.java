package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** When a hand that comes back counts as back, and when as done. The peak is 0.3 V high; there is no noise. */
class AtTheBestTest {

    private static final double VOLTS = 0.3;

    private final Told told = new Told();
    private final PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);
    private final Readings readings = new Readings(finder, 50, 0);

    private static double below(double db) {
        return Math.pow(10, -db / 20);
    }

    /** Rises to the top within a second, goes over it and 1.2 dB down, and waits there. */
    private void pass() {
        follow(2, t -> below(2.4 * (t - 1) * (t - 1)));
        follow(1, t -> below(2.4));
        assertEquals(1, told.count("passed"));
    }

    private void follow(double seconds, DoubleUnaryOperator level) {
        double begin = readings.seconds();
        readings.follow(seconds, t -> VOLTS * level.applyAsDouble(t - begin));
    }

    /** Back to so many dB below the top, slower and slower. */
    private void backTo(double db) {
        follow(1.5, t -> below(db + (2.4 - db) * Math.pow(1 - t / 1.5, 2)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.3, 0.39})
    void aHandThatStopsShortIsNotBack(double db) {
        pass();
        backTo(db);
        follow(6, t -> below(db));
        assertEquals(0, told.count("returned"), told.all.toString());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.04, 0.08})
    void aHandThatStopsAtTheTopIsBackAndHeld(double db) {
        pass();
        backTo(db);
        follow(6, t -> below(db));
        assertEquals(1, told.count("returned"), told.all.toString());
        assertEquals(1, told.count("held"), told.all.toString());
    }

    /** It is back, creeps on through the last hundredths of a decibel for six seconds, and stops there. */
    @Test
    void nothingIsHeldWhileItMoves() {
        pass();
        backTo(0.04);
        follow(6, t -> below(0.04 - 0.005 * t));
        assertEquals(1, told.count("returned"));
        assertEquals(0, told.count("held"), told.all.toString());
        follow(3, t -> below(0.01));
        assertEquals(1, told.count("held"));
        assertTrue(told.first("held").tNanos() / 1e9 > readings.seconds() - 3);
    }

    @Test
    void aHandThatCreepsUpToTheBestIsNotBackBeforeItIsNear() {
        pass();
        backTo(0.09);
        follow(2, t -> below(0.09 - 0.01 * t));
        assertEquals(0, told.count("returned"), told.all.toString());
    }

    /** After the pass the set gives a tenth of a decibel less, and the hand goes over the top once more without stopping. */
    private void passDrifted() {
        pass();
        backTo(0.1);
        follow(1, t -> below(0.1 + 2 * t * t));
        follow(1, t -> below(2.1));
        assertEquals(2, told.count("passed"), told.all.toString());
        told.all.clear();
    }

    /** A top that was crossed lower than the best is what can be had; twice as far from it is still at it. */
    @Test
    void aHandThatCreepsUpToADriftedTopIsBack() {
        passDrifted();
        backTo(0.15);
        follow(2, t -> below(0.15 - 0.005 * t));
        assertEquals(1, told.count("returned"), told.all.toString());
    }

    @Test
    void theNextAdjusterHasNotDrifted() {
        passDrifted();
        backTo(0.1);
        follow(1, t -> below(0.1 + 2 * t * t));
        follow(1, t -> below(2.1));
        finder.restart();
        told.all.clear();
        pass();
        backTo(0.14);
        follow(2, t -> below(0.14 - 0.01 * t));
        assertEquals(0, told.count("returned"), told.all.toString());
    }

    @Test
    void aTopThatIsLowerByMoreIsAnotherAndTheBestStays() {
        pass();
        double best = finder.best();
        backTo(0.5);
        follow(1, t -> below(0.5 + 2 * t * t));
        follow(1, t -> below(2.5));
        assertEquals(1, told.count("two-peaks"), told.all.toString());
        assertEquals(0, told.count("best-aged"));
        assertEquals(best, finder.best());
        backTo(0.5);
        follow(4, t -> below(0.5));
        assertEquals(0, told.count("returned"), told.all.toString());
    }
}
