package org.slugpeak.core.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.signal.Heard.dB;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.signal.Heard.Level;

/** How right the level and the frequency of a tone are, against the signal that was made. */
class ToneAccuracyTest {

    private static final double RATE_HZ = 48_000;

    @Test
    void aCleanToneAnywhereInRangeReadsWithinAHundredthOfADecibel() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 200; i++) {
            double hz = i == 0 ? 300 : i == 1 ? 1100 : random.nextDouble(300, 1100);
            double amplitude = Math.pow(10, random.nextDouble(-4, -0.05));
            Heard heard = Heard.of(
                    RATE_HZ,
                    Signal.at(RATE_HZ)
                            .sine(hz, amplitude, random.nextDouble(6.28))
                            .offset(0.01)
                            .seconds(0.4));
            List<Level> levels = heard.after(0.125);
            assertTrue(levels.size() >= 13);
            for (Level level : levels) {
                assertEquals(Condition.OK, level.condition(), () -> hz + " Hz");
                assertEquals(0, dB(level.fs() / amplitude), 0.01, () -> hz + " Hz");
            }
            assertEquals(hz, heard.quality().toneHz(), 0.02);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {8000, 11_025, 16_000, 22_050, 44_100, 48_000, 88_200, 96_000, 176_400, 192_000})
    void everyUsualSampleRateReadsTheSame(double rateHz) {
        for (double hz : new double[] {300, 402.7, 1000, 1100}) {
            Heard heard = Heard.of(rateHz, Signal.at(rateHz).sine(hz, 0.05, 1).seconds(0.4));
            assertEquals(0, dB(heard.last().fs() / 0.05), 0.01);
            assertEquals(hz, heard.quality().toneHz(), 0.02);
        }
    }

    @Test
    void aStepIsSettledToATenthOfADecibelAfterOneHundredMilliseconds() {
        for (double after : new double[] {0.001, 0.1, 0.3, 0.9}) {
            int stepAt = (int) (0.6 * RATE_HZ);
            Heard heard = Heard.of(
                    RATE_HZ,
                    Signal.at(RATE_HZ)
                            .with(i -> (i < stepAt ? 0.03 : after) * Math.cos(2 * Math.PI * 412 / RATE_HZ * i))
                            .seconds(1));
            for (Level level : heard.after(0.1)) {
                if (level.seconds() <= 0.6) {
                    assertEquals(0, dB(level.fs() / 0.03), 0.01);
                } else if (level.seconds() >= 0.7) {
                    assertEquals(0, dB(level.fs() / after), 0.1);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 49.93, 60, 60.04})
    void humTwentyDecibelsAboveTheToneChangesNothing(double mainsHz) {
        SplittableRandom random = new SplittableRandom(7);
        int checked = 0;
        while (checked < 30) {
            double hz = random.nextDouble(300, 1100);
            double fromLine = Math.abs(hz - Math.round(hz / mainsHz) * mainsHz);
            if (fromLine < 5) {
                continue;
            }
            checked++;
            double amplitude = 0.02;
            Heard heard = Heard.of(
                    RATE_HZ,
                    Signal.at(RATE_HZ)
                            .sine(hz, amplitude, random.nextDouble(6.28))
                            .hum(mainsHz, 10 * amplitude, random.nextLong())
                            .seconds(2));
            assertFalse(heard.after(1.5).isEmpty());
            for (Level level : heard.after(1.5)) {
                assertEquals(0, dB(level.fs() / amplitude), 0.05, () -> hz + " Hz, hum " + mainsHz);
            }
            assertEquals(0, dB(heard.quality().humFs() / (10 * amplitude)), 0.1);
            assertEquals(mainsHz, heard.quality().mainsHz(), 0.002);
        }
    }
}
