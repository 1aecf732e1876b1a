package org.slugpeak.bridge.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BadConfiguration;

/** What a sound input was calibrated to, kept from one day to the next. */
class CalibrationStoreTest {

    @TempDir
    private Path folder;

    private static SoundCalibration of(String device, Channel channel) {
        return new SoundCalibration(device, channel, 0.8437219, 0.4, Instant.parse("2026-11-25T08:00:00Z"));
    }

    @Test
    void whatIsKeptIsFoundAgainExactly() throws Exception {
        CalibrationStore store = new CalibrationStore(folder.resolve("not/yet/there"));
        assertEquals(Optional.empty(), store.find("USB input [plughw:1,0]", Channel.LEFT));
        SoundCalibration kept = of("USB input [plughw:1,0]", Channel.LEFT);
        store.save(kept);
        assertEquals(Optional.of(kept), store.find("USB input [plughw:1,0]", Channel.LEFT));
        assertEquals(Optional.empty(), store.find("USB input [plughw:1,0]", Channel.RIGHT));
        SoundCalibration newer = new SoundCalibration(
                kept.device(), Channel.LEFT, 1e-5, 1e-6, kept.calibratedAt().plusSeconds(1));
        store.save(newer);
        assertEquals(Optional.of(newer), store.find(kept.device(), Channel.LEFT));
        try (var files = Files.list(folder.resolve("not/yet/there"))) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void devicesWhoseNamesLookAlikeAreKeptApart() throws Exception {
        CalibrationStore store = new CalibrationStore(folder);
        Path first = store.save(of("Card \"A\" [hw:1]", Channel.LEFT));
        Path second = store.save(of("Card A (hw:1)", Channel.LEFT));
        assertNotEquals(first, second);
        assertTrue(store.find("Card \"A\" [hw:1]", Channel.LEFT).isPresent());
    }

    @Test
    void aSpoiltFileIsNamedAndNeverTakenForNone() throws Exception {
        CalibrationStore store = new CalibrationStore(folder);
        Path file = store.save(of("Card", Channel.LEFT));
        for (String text : new String[] {
            "volts-per-full-scale = \"much\"\nat-volts = 1.0\ncalibrated-at = \"2026-11-25T08:00:00Z\"\n",
            "volts-per-full-scale = -1.0\nat-volts = 1.0\ncalibrated-at = \"2026-11-25T08:00:00Z\"\n",
            "volts-per-full-scale = 1.0\nat-volts = 1.0\n",
            "volts-per-full-scale = 1.0\nat-volts = 1.0\ncalibrated-at = \"yesterday\"\n",
            "volts-per-full-scale = \n"
        }) {
            Files.writeString(file, text);
            String message = assertThrows(BadConfiguration.class, () -> store.find("Card", Channel.LEFT))
                    .getMessage();
            assertTrue(message.startsWith(file + " is no calibration: "), message);
            assertTrue(message.endsWith("; delete it and calibrate again"), message);
        }
    }
}
