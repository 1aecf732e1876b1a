package org.slugpeak.bridge.disk;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The names that Windows keeps for devices: Microsoft, Naming Files, Paths, and Namespaces (from memory). */
class NewFilesTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "con.jsonl",
                "CON",
                "nul",
                "C:\\logs\\Aux.html",
                "logs/com1.jsonl",
                "com9.tuesday.jsonl",
                "lpt\u00b2.csv",
                "prn .wav",
                "\\\\server\\share\\COM3"
            })
    void aDeviceOfWindowsIsNoFileThere(String name) {
        FileSystemException refused =
                assertThrows(FileSystemException.class, () -> NewFiles.refuseDevices(name, "Windows 11"));
        assertTrue(refused.getMessage().endsWith("choose another name"), refused.getMessage());
        assertDoesNotThrow(() -> NewFiles.refuseDevices(name, "Linux"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "console.jsonl",
                "com10.jsonl",
                "C:\\con\\tuesday.jsonl",
                "communion",
                "nulled.csv",
                "aux-1.wav",
                "tuesday.con"
            })
    void everythingElseIsAFile(String name) {
        assertDoesNotThrow(() -> NewFiles.refuseDevices(name, "Windows 11"));
    }

    @Test
    void whatIsThereIsNotMadeAgain() throws IOException {
        Path file = folder.resolve("com1.jsonl");
        NewFiles.create(file);
        assertTrue(Files.exists(file));
        assertThrows(FileAlreadyExistsException.class, () -> NewFiles.create(file));
    }
}
