package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** When a hand that comes back counts as back, and when as done. The peak is 1 V high; there is no noise. */
class AtTheBestTest {

    private final Told told = new Told();
    private final Readings readings = new Readings(PeakFinder.create(PeakSettings.defaults(), told), 50, 0);

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
        readings.follow(seconds, t -> level.applyAsDouble(t - begin));
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

    /** After the pass the set gives half a decibel less, and the hand goes over the top once more without stopping. */
    private void passAged() {
        pass();
        backTo(0.5);
        follow(1, t -> below(0.5 + 2 * t * t));
        follow(1, t -> below(2.5));
        assertEquals(1, told.count("best-aged"), told.all.toString());
        told.all.clear();
    }

    @Test
    void aHandThatCreepsUpToTheBestIsNotBackBeforeItIsNear() {
        pass();
        backTo(0.09);
        follow(2, t -> below(0.09 - 0.01 * t));
        assertEquals(0, told.count("returned"), told.all.toString());
    }

    /** A best that was lowered once is known only to within the drift: twice as far from it is still at it. */
    @Test
    void aHandThatCreepsUpToAnAgedBestIsBackAtTwiceTheDistance() {
        passAged();
        backTo(0.59);
        follow(2, t -> below(0.59 - 0.01 * t));
        assertEquals(1, told.count("returned"), told.all.toString());
    }
}
