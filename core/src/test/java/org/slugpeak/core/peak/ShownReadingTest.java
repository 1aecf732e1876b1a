package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.reading.Condition;

/** The reading that is shown and heard keeps up with a hand that turns, stops and turns again. */
class ShownReadingTest {

    private static final double NOISE = 0.0035;
    private static final double STAGE_DB = 1.5;
    private static final double TURNING_SECONDS = 0.3;
    private static final double STAGE_SECONDS = 0.8;
    private static final double SECONDS = 12;

    /** An ear is to hear it within a tenth of a second, and the sound itself takes some of that. */
    private static final double BEHIND_SECONDS = 0.06;

    /** Four sigma of one reading, dB. */
    private static final double NOISE_DB = 20 * Math.log10(1 + 4 * NOISE);

    private static double levelDb(double seconds) {
        double stages = Math.floor(seconds / STAGE_SECONDS);
        return STAGE_DB * (stages + Math.min(1, (seconds - stages * STAGE_SECONDS) / TURNING_SECONDS));
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 100, 200, 1000})
    void isNeverFurtherBehindThanAnEarAllows(double perSecond) {
        PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), new Told());
        Random random = new Random(9);
        for (int i = 0; i < SECONDS * perSecond; i++) {
            double seconds = i / perSecond;
            double reading = Math.pow(10, levelDb(seconds) / 20) * (1 + NOISE * random.nextGaussian());
            finder.accept(Math.round(seconds * 1e9), reading, Condition.OK);
            double shownDb = 20 * Math.log10(finder.smoothed());
            double leastDb = levelDb(Math.max(0, seconds - BEHIND_SECONDS)) - NOISE_DB;
            assertTrue(shownDb >= leastDb, shownDb + " dB shown at " + seconds + " s, where " + leastDb + " is due");
            assertTrue(shownDb <= levelDb(seconds) + NOISE_DB, shownDb + " dB shown before it was read");
        }
    }
}
