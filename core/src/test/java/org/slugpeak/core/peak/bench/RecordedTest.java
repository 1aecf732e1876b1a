package org.slugpeak.core.peak.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A recording is played as it was made, in proportion to the level. */
class RecordedTest {

    @TempDir
    Path folder;

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("noise.txt"), text);
    }

    @Test
    void theMeanOverManyReadingsIsTheLevel() throws IOException {
        Disturbance played =
                Recorded.of(file("# volts\n4.9\n5.0\n\n5.1\n5.0\n"), 10).make(new SplittableRandom(1), 10);
        double sum = 0;
        for (int i = 0; i < 80; i++) {
            double value = played.read(i / 10.0, 0.5);
            assertTrue(value >= 0.49 - 1e-12 && value <= 0.51 + 1e-12, "reading " + value);
            sum += value;
        }
        assertEquals(0.5, sum / 80, 1e-12);
    }

    @Test
    void aSlowMeterAveragesOverTheTimeOfItsReading() throws IOException {
        Disturbance played = Recorded.of(file("1\n3\n1\n3\n"), 8).make(new SplittableRandom(2), 1);
        for (int i = 0; i < 20; i++) {
            assertEquals(2, played.read(i, 2), 1e-12);
        }
    }

    @Test
    void goingBackwardsByTurnsLeavesNoSeam() throws IOException {
        Disturbance played = Recorded.of(file("10\n11\n12\n13\n14\n"), 1).make(new SplittableRandom(3), 1);
        double before = played.read(0, 12);
        for (int i = 1; i < 40; i++) {
            double value = played.read(i, 12);
            assertTrue(Math.abs(value - before) <= 1 + 1e-9, before + " then " + value);
            before = value;
        }
    }

    @Test
    void aLineThatIsNoNumberIsNamed() throws IOException {
        Path file = file("1\nhalf\n");
        String message = assertThrows(IllegalArgumentException.class, () -> Recorded.of(file, 10))
                .getMessage();
        assertTrue(message.contains("'half'"), message);
    }

    @Test
    void aFileWithoutReadingsIsRefused() throws IOException {
        Path file = file("# nothing\n");
        assertThrows(IllegalArgumentException.class, () -> Recorded.of(file, 10));
    }
}
