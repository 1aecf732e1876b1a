package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.peak.Readings.resonance;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Somebody turns the generator off, or has not turned it on yet: the meter shows exactly nothing. */
class ZeroReadingsTest {

    private final Told told = new Told();
    private final PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);

    private void zeros(Readings meter, double seconds, double rate) {
        for (int i = 0; i < seconds * rate; i++) {
            meter.skip(1 / rate);
            finder.accept(meter.nanos(), 0, org.slugpeak.core.reading.Condition.OK);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 10, 50, 200})
    void nothingButZeroIsNoAdjusterWithoutEffect(double rate) {
        zeros(new Readings(finder, rate, 0), 40, rate);
        assertEquals(List.of("signal-gone"), told.words());
        assertEquals(0, finder.best());
        assertEquals(0, finder.smoothed());
    }

    @ParameterizedTest
    @ValueSource(doubles = {3, 10, 50, 200})
    void aGeneratorThatWasOffLeavesTheBest(double rate) {
        Readings meter = new Readings(finder, rate, 0.0005);
        meter.rest(3, 0.5).follow(4, t -> 0.5 + 0.02 * (t - 3));
        double best = finder.best();
        zeros(meter, 3, rate);
        assertEquals(best, finder.best(), 1e-9);
        meter.rest(4, 0.58);
        assertEquals(List.of("signal-gone", "signal-back"), told.words());
        assertEquals(0.58, finder.best(), 0.002);
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 50, 200})
    void aPeakIsFoundAfterTheGeneratorWasOffBehindIt(double rate) {
        Readings meter = new Readings(finder, rate, 0.001);
        meter.rest(2, resonance(8, 3).applyAsDouble(2)).follow(7.5, resonance(8, 3));
        assertEquals(1, told.count("passed"));
        double best = finder.best();
        zeros(meter, 3, rate);
        double top = meter.seconds() + 2;
        meter.follow(2, resonance(top, 3)).rest(4, 1);
        assertEquals(best, finder.best(), 0.002);
        assertEquals(1, told.count("passed"), told.all.toString());
        assertEquals(1, told.count("held"), told.all.toString());
        assertEquals(0, told.count("best-aged"), told.all.toString());
    }

    /** With the generator off a resting voltage may be left: the level is lower, and comes back to where it was. */
    @Test
    void aBestThatWasLoweredIsKnownAgainWhenTheLevelComesBack() {
        Readings meter = new Readings(finder, 50, 0.001);
        meter.rest(2, resonance(8, 3).applyAsDouble(2)).follow(8, resonance(8, 3));
        double best = finder.best();
        double level = resonance(8, 3).applyAsDouble(10);
        meter.rest(4, 0.3 * level);
        assertEquals(1, told.count("best-aged"), told.all.toString());
        meter.rest(3, level);
        assertEquals(1, told.count("signal-back"), told.all.toString());
        assertEquals(best, finder.best());
        assertTrue(told.count("passed") <= 2, told.all.toString());
    }

    @Test
    void aGeneratorTurnedFarDownForGoodBeginsTheBestAnew() {
        Readings meter = new Readings(finder, 50, 0.000_01);
        meter.rest(3, 0.5).rest(14, 0.01);
        assertEquals(List.of("signal-gone", "best-aged"), told.words());
        assertEquals(0.01, finder.best(), 0.000_1);
    }
}
