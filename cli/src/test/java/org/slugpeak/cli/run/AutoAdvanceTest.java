package org.slugpeak.cli.run;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;
import static org.slugpeak.cli.display.Sessions.seconds;
import static org.slugpeak.cli.display.Sessions.zeroReading;

import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Held;

class AutoAdvanceTest {

    private final AutoAdvance advance = new AutoAdvance();

    @Test
    void turningTheNextAdjusterAfterOneWasHeldIsNoticed() {
        advance.take(new Held(seconds(10), 1.0, 0));
        advance.take(reading(20, 0.96, 1.0, Trend.FALLING));
        assertFalse(advance.isDue(), "one reading may be a spike");
        advance.take(reading(20.1, 0.95, 1.0, Trend.FALLING));
        assertTrue(advance.isDue());
    }

    @Test
    void aBetterReadingAfterwardsIsAlsoTheNextAdjuster() {
        advance.take(new Held(seconds(10), 1.0, 0));
        advance.take(reading(20, 1.05, 1.05, Trend.RISING));
        advance.take(reading(20.1, 1.08, 1.08, Trend.RISING));
        assertTrue(advance.isDue());
    }

    @Test
    void nothingIsDueBeforeAnythingWasHeld() {
        for (int i = 0; i < 50; i++) {
            advance.take(reading(i, 1 - i / 100.0, 1.0, Trend.FALLING));
        }
        assertFalse(advance.isDue());
    }

    @Test
    void restAndSlowDriftAreNotTurning() {
        advance.take(new Held(seconds(10), 1.0, 0));
        for (int i = 0; i < 50; i++) {
            advance.take(reading(10 + i, 1 - i / 100.0, 1.0, Trend.STEADY));
        }
        assertFalse(advance.isDue());
    }

    @Test
    void aHandTakenAwayIsNotTheNextAdjuster() {
        advance.take(new Held(seconds(10), 1.0, 0));
        for (int i = 0; i < 10; i++) {
            advance.take(reading(11 + i * 0.05, 0.985, 1.0, Trend.FALLING));
        }
        assertFalse(advance.isDue(), "0.13 dB");
    }

    @Test
    void onceBegunTheNextAdjusterMustBeHeldAgain() {
        advance.take(new Held(seconds(10), 1.0, 0));
        advance.take(reading(20, 0.9, 1.0, Trend.FALLING));
        advance.take(reading(20.1, 0.9, 1.0, Trend.FALLING));
        advance.take(new Adjuster(seconds(20.1), "adjuster 2", Adjuster.Action.BEGIN, 0.9, Double.NaN, Double.NaN));
        assertFalse(advance.isDue(), "it has just begun: whoever asks again before the next reading begins no third");
        advance.take(reading(20.2, 0.8, 0.9, Trend.FALLING));
        advance.take(reading(20.3, 0.7, 0.9, Trend.FALLING));
        assertFalse(advance.isDue());
    }

    @Test
    void aZeroIsLeftByAFractionOfTheLargestSwing() {
        advance.take(zeroReading(1, 0.5, Trend.RISING));
        advance.take(new Held(seconds(10), 0.001, Double.NaN));
        advance.take(zeroReading(11, 0.009, Trend.RISING));
        advance.take(zeroReading(11.1, 0.009, Trend.RISING));
        assertFalse(advance.isDue());
        advance.take(zeroReading(12, 0.012, Trend.RISING));
        advance.take(zeroReading(12.1, 0.014, Trend.RISING));
        assertTrue(advance.isDue());
    }
}
