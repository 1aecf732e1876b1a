package org.slugpeak.bridge.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.core.scale.KnownPoint;

class PointFileTest {

    @TempDir
    private Path folder;

    @Test
    void readsBackWhatItWrote() throws BadInput {
        List<KnownPoint> points = List.of(new KnownPoint(455e3, 457_203.5, 12), new KnownPoint(10.7e6, 10.69e6, 0));
        Path file = folder.resolve("generator.csv");
        PointFile.write(file, points);
        assertEquals(points, PointFile.read(file, 99, false));
    }

    @Test
    void skipsCommentsAndTakesTheUsualUncertainty() throws Exception {
        Path file = Files.writeString(folder.resolve("p.csv"), "# range A\n\n455,457.2\n");
        assertEquals(List.of(new KnownPoint(455e3, 457.2e3, 10)), PointFile.read(file, 10, false));
    }

    @Test
    void namesEveryBadLineAtOnce() throws Exception {
        Path file = Files.writeString(folder.resolve("p.csv"), "455,457\n455\nabc,1\n-1,5\n500,501\n");
        BadInput bad = assertThrows(BadInput.class, () -> PointFile.read(file, 10, false));
        assertTrue(bad.getMessage().contains("line 2, line 3, line 4: expected dial,true"), bad.getMessage());
    }

    @Test
    void saysThatAFileIsNotThere() {
        BadInput bad = assertThrows(BadInput.class, () -> PointFile.read(folder.resolve("no.csv"), 10, false));
        assertTrue(bad.getMessage().contains("no.csv"));
        assertThrows(BadInput.class, () -> PointFile.write(folder.resolve("no/p.csv"), List.of()));
    }

    @Test
    void takesDecimalCommas() throws Exception {
        Path file = Files.writeString(folder.resolve("p.csv"), "455;457,2;0,1\n");
        assertEquals(List.of(new KnownPoint(455e3, 457.2e3, 100)), PointFile.read(file, 10, false));
        assertEquals(List.of(new KnownPoint(455e3, 457.2e3, 100)), PointFile.read(file, 10, true));
    }

    /** Found by the campaign of faults: the pattern of such a cell went as deep as the cell was long. */
    @Test
    void aNumberWithPointsWithoutEndIsABadLineLikeAnyOther() throws Exception {
        Path file = Files.writeString(folder.resolve("p.csv"), "400,397" + "9.79".repeat(50_000) + "\n450,452\n");
        BadInput bad = assertThrows(BadInput.class, () -> PointFile.read(file, 10, false));
        assertTrue(bad.getMessage().contains("line 1"), bad.getMessage());
    }
}
