package org.slugpeak.bridge.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.core.curve.ResponsePoint;

class CurveFileTest {

    @TempDir
    Path folder;

    @Test
    void writtenPointsReadBackTheSame() throws BridgeException {
        List<ResponsePoint> points = List.of(new ResponsePoint(450e3, 0.4), new ResponsePoint(455.5e3, 0.8125));
        Path file = folder.resolve("curve.csv");
        CurveFile.write(file, points);
        assertEquals(points, CurveFile.read(file, false));
    }

    @Test
    void neverWritesOverAFile() throws IOException {
        Path file = Files.writeString(folder.resolve("curve.csv"), "mine");
        assertThrows(BridgeException.class, () -> CurveFile.write(file, List.of()));
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void skipsHeadingRemarksAndBlankLines() throws IOException, BridgeException {
        Path file = Files.writeString(folder.resolve("curve.csv"), "kHz;volts\n\n# as found\n450;0.4\n455 ; 0.8\n");
        assertEquals(2, CurveFile.read(file, false).size());
    }

    @Test
    void namesEveryBadLine() throws IOException {
        Path file = Files.writeString(folder.resolve("curve.csv"), "450,0.4\n451\n452,-1\n453,x\nwhat,now\n");
        String message = assertThrows(BridgeException.class, () -> CurveFile.read(file, false))
                .getMessage();
        assertTrue(message.contains("line 2, line 4, line 5"), message);
        assertTrue(message.contains("455,0.82"), message);
    }

    @Test
    void aFileThatIsNotThereIsSaidSo() {
        String message = assertThrows(BridgeException.class, () -> CurveFile.read(folder.resolve("none.csv"), false))
                .getMessage();
        assertTrue(message.contains("none.csv"), message);
    }

    @Test
    void decimalCommasAreFoundOrTold() throws IOException, BridgeException {
        List<ResponsePoint> expected = List.of(new ResponsePoint(440.5e3, 1.9));
        Path file = Files.writeString(folder.resolve("commas.csv"), "440,5;1,9\n");
        assertEquals(expected, CurveFile.read(file, false));
        assertEquals(expected, CurveFile.read(file, true));
    }

    @Test
    void fourWholeNumbersMayBeTwoWithCommas() throws IOException {
        Path file = Files.writeString(folder.resolve("four.csv"), "440,5,1,9\n");
        String message = assertThrows(BridgeException.class, () -> CurveFile.read(file, false))
                .getMessage();
        assertTrue(message.contains("'440,5,1,9' may be four numbers, or 440.5 and 1.9"), message);
        assertThrows(BridgeException.class, () -> CurveFile.read(file, true));
    }

    /** Found by the campaign's fuzzer; the second file is what it wrote. */
    @ParameterizedTest
    @ValueSource(strings = {"450\n440,5,1,9\n", ",; ,R ,; 001291940\u078065614042405,\n0$\n1,"})
    void aShortLineBeforeDoubtfulOnesCostsOneMessage(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("short.csv"), text);
        assertThrows(BridgeException.class, () -> CurveFile.read(file, false));
    }
}
