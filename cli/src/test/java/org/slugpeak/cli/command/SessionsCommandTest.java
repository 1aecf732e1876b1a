package org.slugpeak.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionsCommandTest {

    private static final String LOG = """
            {"type":"session","version":1,"startedAt":"2026-11-25T09:00:00Z","source":"/dev/ttyUSB0","quantity":"dc voltage","unit":"V","seek":"peak","dwell":2,"tool":"slugpeak 0.1.0"}
            {"type":"mark","t":0,"text":"model=Tarnfield 54A"}
            {"type":"mark","t":0,"text":"owner=A. Customer"}
            {"type":"adjuster","t":0,"name":"T1 top","action":"begin","before":0.5,"after":null,"gainDb":null}
            {"type":"reading","t":0,"value":0.5,"smoothed":0.5,"best":0.5,"bestSigma":0.001,"ofBest":1,"trend":"steady","condition":"ok"}
            {"type":"end","t":1,"readings":1,"reason":"quit"}
            """;

    @TempDir
    private Path folder;

    private Path logs;

    @BeforeEach
    void writeLog() throws IOException {
        logs = Files.createDirectory(folder.resolve("logs"));
        Files.writeString(logs.resolve("tuesday.jsonl"), LOG);
    }

    private CommandRun sessions(Object... args) {
        return CommandRun.of(
                new SessionsCommand(folder.resolve("state")),
                java.util.Arrays.stream(args).map(Object::toString).toArray(String[]::new));
    }

    @Test
    void listsWhatIsInTheFolder() {
        CommandRun run = sessions("--folder", logs);
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.out().contains("Tarnfield 54A") && run.out().contains("tuesday.jsonl"), run.out());
        assertTrue(run.err().contains("1 found"), run.err());
        CommandRun none = sessions("--folder", logs, "larkmoor");
        assertEquals(0, none.exitCode());
        assertEquals("", none.out());
        assertTrue(none.err().contains("nothing was found"), none.err());
    }

    @Test
    void theFolderMayStandInTheSettings() throws IOException {
        CommandRun unknown = sessions();
        assertEquals(1, unknown.exitCode());
        Files.createDirectories(folder.resolve("state"));
        Files.writeString(folder.resolve("state/settings.toml"), "sessions = '" + logs + "'\n");
        assertTrue(sessions().out().contains("tuesday.jsonl"));
    }

    @Test
    void opensTheOneThatIsFoundAsItsReport() throws IOException {
        assertEquals(0, sessions("--folder", logs, "--open").exitCode());
        String page = Files.readString(logs.resolve("tuesday.html"));
        assertTrue(page.contains("A. Customer"), "facts of the log are on the first page");
        Files.writeString(logs.resolve("wednesday.jsonl"), LOG);
        assertEquals(1, sessions("--folder", logs, "--open").exitCode());
        assertEquals(0, sessions("--folder", logs, "--open", "wednesday").exitCode());
    }

    @Test
    void anArchiveHasEverythingAndWhoIsToldOfIsSaidFirst() throws IOException {
        Path file = folder.resolve("all.zip");
        CommandRun run = sessions("--folder", logs, "--export", file);
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.err().indexOf("tells of persons (owner)") < run.err().indexOf("wrote"), run.err());
        Map<String, String> entries = entries(file);
        assertEquals(LOG, entries.get("logs/tuesday.jsonl"));
        assertTrue(
                entries.get("sessions.jsonl")
                        .contains("\"facts\":{\"model\":\"Tarnfield 54A\",\"owner\":\"A. Customer\"}"),
                entries::toString);
        assertEquals(1, sessions("--folder", logs, "--export", file).exitCode(), "nothing is ever replaced");
        assertFalse(Files.readString(file, StandardCharsets.ISO_8859_1).isEmpty());
    }

    private static Map<String, String> entries(Path file) throws IOException {
        Map<String, String> entries = new TreeMap<>();
        try (InputStream in = Files.newInputStream(file);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return entries;
    }

    @Test
    void refusesWhatItCannotDo() {
        assertEquals(1, sessions("--folder", folder.resolve("none")).exitCode());
        assertEquals(2, sessions("--folder", logs, "--since", "tuesday").exitCode());
        assertEquals(
                2, sessions("--folder", logs, "--open", "--export", "a.zip").exitCode());
    }
}
