package org.slugpeak.bridge.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.bridge.sound.WavBytes.wav;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;

/** From a known voltage to readings in volts. */
class CalibratingTest {

    @TempDir
    private Path folder;

    private static Calibrating.Outcome of(double volts, double[] levels, Condition condition) {
        Calibrating calibrating = new Calibrating(volts);
        for (double level : levels) {
            calibrating.take(new Reading(0, level, condition));
        }
        assertTrue(calibrating.enough());
        return calibrating.outcome();
    }

    private static double[] constant(int count, double level) {
        double[] levels = new double[count];
        Arrays.fill(levels, level);
        return levels;
    }

    @Test
    void fourHundredMillivoltsThatFillATenthOfTheScaleMakeItFourVolts() {
        Calibrating.Outcome outcome = of(0.4, constant(50, 0.1), Condition.OK);
        assertEquals(4, outcome.voltsPerFullScale(), 1e-12);
        assertEquals(0.1, outcome.levelFs(), 1e-12);
        assertEquals(0, outcome.spreadDb(), 1e-12);
        assertEquals("", outcome.problem());
    }

    @Test
    void whatCannotBeTrustedIsRefusedWithWhatToDo() {
        assertEquals(
                "the sound input clips: turn its level down and calibrate again",
                of(0.4, constant(300, 0.9), Condition.CLIPPING).problem());
        assertEquals(
                "no steady tone is heard: feed a sine of 300 to 1100 Hz and the stated voltage",
                of(0.4, constant(300, 0), Condition.NO_VALUE).problem());
        assertEquals(
                "the tone is more than 60 dB below full scale: turn the input's level up and calibrate again",
                of(0.4, constant(50, 0.0009), Condition.OK).problem());
        double[] wandering = constant(50, 0.1);
        wandering[30] = 0.11;
        Calibrating.Outcome outcome = of(0.4, wandering, Condition.OK);
        assertEquals("the level wanders by 0.8 dB: wait until it is steady and calibrate again", outcome.problem());
        assertFalse(outcome.isGood());
        assertTrue(Double.isNaN(outcome.voltsPerFullScale()));
        assertThrows(IllegalArgumentException.class, () -> new Calibrating(0));
        assertThrows(IllegalArgumentException.class, () -> new Calibrating(Double.NaN));
    }

    @Test
    void aToneThatComesAndGoesBeginsAnew() {
        Calibrating calibrating = new Calibrating(1);
        for (int i = 0; i < 49; i++) {
            calibrating.take(Reading.of(0, 0.2));
        }
        calibrating.take(Reading.without(0, Condition.NO_VALUE));
        for (int i = 0; i < 50; i++) {
            assertFalse(calibrating.enough());
            calibrating.take(Reading.of(0, 0.5));
        }
        assertEquals(2, calibrating.outcome().voltsPerFullScale(), 1e-12);
    }

    @Test
    void theWholeWayFromAToneToAKeptScaleAndReadingsInVolts() throws Exception {
        Path file = wav().tone(402, 0.35).frames(80_000).in(folder);
        Calibrating calibrating = new Calibrating(0.4);
        try (SoundSource raw =
                new SoundSource(WavCarrier.open(file, 0.1), SoundOptions.defaults(), OptionalDouble.of(1))) {
            Told.all(raw).readings.forEach(calibrating::take);
        }
        CalibrationStore store = new CalibrationStore(folder.resolve("kept"));
        double scale = calibrating.outcome().voltsPerFullScale();
        store.save(new SoundCalibration("Card", Channel.LEFT, scale, 0.4, Instant.EPOCH));
        double kept = store.find("Card", Channel.LEFT).orElseThrow().voltsPerFullScale();
        try (SoundSource inVolts =
                new SoundSource(WavCarrier.open(file, 0.1), SoundOptions.defaults(), OptionalDouble.of(kept))) {
            assertEquals(0.4, Told.all(inVolts).last().value(), 1e-5);
        }
    }
}
