package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.ReadingTaken;

class BeatEarTest {

    private static final double READINGS_PER_SECOND = 50;

    private final BeatEar ear = new BeatEar();
    private long readings;

    private void listen(double belowDb, double seconds) {
        for (int i = 0; i < seconds * READINGS_PER_SECOND; i++) {
            readings++;
            double ofBest = Math.pow(10, -belowDb / 20);
            long tNanos = Math.round(readings / READINGS_PER_SECOND * 1e9);
            ear.hear(new ReadingTaken(Reading.of(tNanos, ofBest), ofBest, 1, Double.NaN, ofBest, Trend.STEADY));
        }
    }

    @Test
    void fourBeatsASecondAreHeardAndTwoAreNot() {
        listen(0.03, 1);
        assertTrue(ear.beats());
        listen(0.01, 2);
        assertFalse(ear.beats());
    }

    @Test
    void aQuickerBeatIsHeardOnce() {
        listen(0.05, 1);
        assertFalse(ear.takeWorse());
        listen(0.12, 1);
        assertTrue(ear.takeWorse());
        assertFalse(ear.takeWorse());
    }

    @Test
    void withoutABestThereIsNothingToHear() {
        ear.hear(new ReadingTaken(Reading.of(0, 1), 1, Double.NaN, Double.NaN, Double.NaN, Trend.STEADY));
        assertFalse(ear.beats());
        assertFalse(ear.takeWorse());
    }
}
