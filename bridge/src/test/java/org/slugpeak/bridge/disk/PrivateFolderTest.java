package org.slugpeak.bridge.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BadConfiguration;

@EnabledOnOs({OS.LINUX, OS.MAC})
final class PrivateFolderTest {

    @TempDir
    private Path folder;

    private static void allow(Path folder, String permissions) throws IOException {
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString(permissions));
    }

    private static void assertRefused(Path wanted, Path named) {
        String said = assertThrows(BadConfiguration.class, () -> PrivateFolder.find(wanted))
                .getMessage();
        assertTrue(said.contains(named.toString()), said);
    }

    @Test
    void itIsMadeForTheUserAlone() throws Exception {
        Path made = PrivateFolder.find(folder.resolve("a/b"));
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(made)));
        assertEquals(made, PrivateFolder.find(folder.resolve("a/b")), "and found again");
    }

    @Test
    void oneThatOthersCanWriteIsRefusedAndLeftAsItIs() throws Exception {
        Path open = Files.createDirectories(folder.resolve("a/b"));
        allow(open, "rwxrwxrwx");
        assertRefused(open, open);
        assertEquals("rwxrwxrwx", PosixFilePermissions.toString(Files.getPosixFilePermissions(open)));
    }

    @Test
    void oneWhosePlaceOthersCouldTakeIsRefused() throws Exception {
        Path above = Files.createDirectory(folder.resolve("a"));
        allow(above, "rwxrwxrwx");
        assertRefused(above.resolve("b"), above);
    }

    @Test
    void aLinkIsLookedAtWhereItLeads() throws Exception {
        Path open = Files.createDirectory(folder.resolve("open"));
        allow(open, "rwxrwxrwx");
        Path link = Files.createSymbolicLink(folder.resolve("link"), open);
        assertRefused(link.resolve("native"), open);
    }

    @Test
    void whereAFileIsInTheWayThatIsSaid() throws Exception {
        Path file = Files.createFile(folder.resolve("file"));
        assertRefused(file.resolve("native"), file.resolve("native"));
    }
}
