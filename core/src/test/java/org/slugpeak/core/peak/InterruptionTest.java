package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.peak.Readings.resonance;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Somebody pulls the plug while the slug goes on moving. */
class InterruptionTest {

    private final Told told = new Told();
    private final PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);
    private final Readings meter = new Readings(finder, 50, 0.0035);

    /** Half a decibel below the top, and on downwards at the speed at which the top was passed. */
    private static DoubleUnaryOperator fallingFrom(double beginSeconds) {
        return resonance(beginSeconds - 1.05, 3);
    }

    private void held() {
        meter.rest(1, resonance(8, 3).applyAsDouble(1)).follow(8.5, resonance(8, 3));
        meter.follow(1.5, resonance(11, 3)).rest(4, 1);
        assertEquals(1, told.count("held"));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void keepsTheBestOfAHeldPeak(boolean said) {
        held();
        double best = finder.best();
        if (said) {
            finder.gap();
        }
        meter.skip(5);
        meter.follow(3, fallingFrom(meter.seconds()));
        assertEquals(best, finder.best());
        assertEquals(0, told.count("best-aged"), told.all.toString());
        assertEquals(1, told.count("passed"), told.all.toString());
    }

    @Test
    void keepsTheBestAfterAPassAndFindsItAgain() {
        meter.rest(1, resonance(8, 3).applyAsDouble(1)).follow(8.5, resonance(8, 3));
        double best = finder.best();
        finder.gap();
        meter.skip(5);
        meter.follow(1.5, fallingFrom(meter.seconds()));
        assertEquals(best, finder.best());
        assertEquals(0, told.count("best-aged"), told.all.toString());
        double top = meter.seconds() + 2.55;
        meter.follow(2.55, resonance(top, 3)).rest(3, 1);
        assertTrue(told.count("held") == 1, told.all.toString());
    }
}
