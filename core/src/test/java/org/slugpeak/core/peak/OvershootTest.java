package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hand that obeys every word some time later, and always turns at the same speed until it is told to turn slower. */
class OvershootTest {

    private static final double RATE = 50;
    /** 0.15 dB are missing so many half-widths beside the top. */
    private static final double MAY_MISS_HALF_WIDTHS = Math.sqrt(Math.pow(10, 0.015) - 1);

    private final Told told = new Told();

    private void obey(double halfWidthsPerSecond, double reactionSeconds) {
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
                actAt = i / RATE + reactionSeconds;
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"1.2", "2.5"})
    void whoRanPastTheBestOnceIsToldBeforeTheNextTimeHowMuchSlowerToTurn(double halfWidthsPerSecond) {
        obey(halfWidthsPerSecond, 0.35);
        assertEquals(1, told.count("turn-slower"), told.all.toString());
        assertEquals(1, told.count("returned"), told.all.toString());
        double fits = halfWidthsPerSecond * Hunt.REACTION_SECONDS / MAY_MISS_HALF_WIDTHS;
        assertEquals(fits, told.first("turn-slower").value(), 0.4 * fits);
    }

    @ParameterizedTest
    @CsvSource({"0.4", "0.5"})
    void whoStopsLateIsToldOnTheWayBackAfterAnOvershoot(double halfWidthsPerSecond) {
        obey(halfWidthsPerSecond, 0.9);
        assertEquals(1, told.count("turn-slower"), told.all.toString());
        assertTrue(told.count("returned") >= 1, told.all.toString());
    }

    @ParameterizedTest
    @CsvSource({"0.2", "0.4"})
    void whoStopsInTimeIsNotTold(double halfWidthsPerSecond) {
        obey(halfWidthsPerSecond, 0.35);
        assertEquals(0, told.count("turn-slower"), told.all.toString());
        assertTrue(told.count("returned") >= 1);
    }
}
