package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hand that obeys every word a third of a second later, and always turns at the same speed. */
class OvershootTest {

    private static final double RATE = 50;
    private static final double REACTION_SECONDS = 0.35;

    private final Told told = new Told();

    private void obey(double halfWidthsPerSecond) {
        Readings meter = new Readings(PeakFinder.create(PeakSettings.defaults(), told), RATE, 0.001);
        double place = -2;
        double direction = 1;
        double actAt = Double.POSITIVE_INFINITY;
        int heard = 0;
        for (int i = 0; i < 20 * RATE && told.count("turn-slower") == 0; i++) {
            if (i / RATE >= actAt) {
                direction = told.all.get(heard - 1).word().equals("passed") ? -Math.signum(direction) : 0.1 * direction;
                actAt = Double.POSITIVE_INFINITY;
            }
            place += direction * halfWidthsPerSecond / RATE;
            double level = 1 / Math.hypot(1, place);
            meter.follow(1 / RATE, t -> level);
            if (told.all.size() > heard) {
                heard = told.all.size();
                actAt = i / RATE + REACTION_SECONDS;
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"2.5", "4"})
    void whoRunsPastTheBestTwiceIsAskedToTurnSlower(double halfWidthsPerSecond) {
        obey(halfWidthsPerSecond);
        assertEquals(1, told.count("turn-slower"), told.all.toString());
        assertEquals(2, told.first("turn-slower").value());
    }

    @ParameterizedTest
    @CsvSource({"0.2", "0.4"})
    void whoStopsInTimeIsNot(double halfWidthsPerSecond) {
        obey(halfWidthsPerSecond);
        assertEquals(0, told.count("turn-slower"), told.all.toString());
        assertTrue(told.count("returned") >= 1);
    }
}
