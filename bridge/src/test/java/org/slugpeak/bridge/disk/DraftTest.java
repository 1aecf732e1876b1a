package org.slugpeak.bridge.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class DraftTest {

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("kept");
    }

    private static void write(Draft draft, String text) throws IOException {
        draft.out().write(text.getBytes(StandardCharsets.UTF_8));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void theOldFileStandsUntilTheNewOneIsWhole() throws IOException {
        Files.writeString(file, "old");
        try (Draft draft = Draft.of(file)) {
            write(draft, "new");
            assertEquals("old", Files.readString(file));
            draft.replace();
        }
        assertEquals("new", Files.readString(file));
        assertEquals(List.of("kept"), names());
    }

    @Test
    void aDraftThatIsGivenUpLeavesNothing() throws IOException {
        Files.writeString(file, "old");
        try (Draft draft = Draft.of(file)) {
            write(draft, "half");
        }
        assertEquals("old", Files.readString(file));
        assertEquals(List.of("kept"), names());
    }

    @Test
    void whatIsToBeNewTakesNobodysPlace() throws IOException {
        try (Draft draft = Draft.of(file)) {
            write(draft, "new");
            Files.writeString(file, "came meanwhile");
            assertThrows(FileAlreadyExistsException.class, draft::create);
        }
        assertEquals("came meanwhile", Files.readString(file));
        assertEquals(List.of("kept"), names());
    }

    @Test
    void aLinkThatLeadsNowhereIsNobodysPlaceEither() throws IOException {
        Files.createSymbolicLink(file, folder.resolve("nowhere"));
        try (Draft draft = Draft.of(file)) {
            assertThrows(FileAlreadyExistsException.class, draft::create);
        }
        assertTrue(Files.isSymbolicLink(file));
    }

    @Test
    void throughALinkTheFileBehindItIsReplaced() throws IOException {
        Path target =
                Files.writeString(Files.createDirectory(folder.resolve("d")).resolve("real"), "old");
        Files.createSymbolicLink(file, target);
        try (Draft draft = Draft.of(file)) {
            write(draft, "new");
            draft.replace();
        }
        assertTrue(Files.isSymbolicLink(file));
        assertEquals("new", Files.readString(target));
    }

    @Test
    void aDraftLeftByAPowerCutIsInNobodysWay() throws IOException {
        Draft left = Draft.of(file);
        try (Draft draft = Draft.of(file)) {
            write(draft, "new");
            draft.create();
        }
        assertEquals("new", Files.readString(file));
        left.close();
    }

    @Test
    void aTextIsReadUpToItsLimitAndRefusedBeyond() throws IOException {
        Path most = Files.write(folder.resolve("most"), new byte[SmallFile.MOST_BYTES]);
        assertEquals(SmallFile.MOST_BYTES, SmallFile.read(most).length());
        Path more = Files.write(folder.resolve("more"), new byte[SmallFile.MOST_BYTES + 1]);
        assertTrue(assertThrows(IOException.class, () -> SmallFile.read(more))
                .getMessage()
                .contains("more than 1000000"));
        Path bytes = Files.write(folder.resolve("bytes"), new byte[] {(byte) 0xC3, 'x'});
        assertEquals(
                "it is no text in UTF-8",
                assertThrows(IOException.class, () -> SmallFile.read(bytes)).getMessage());
    }
}
