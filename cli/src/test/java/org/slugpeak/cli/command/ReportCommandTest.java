package org.slugpeak.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {

    private static final String LOG = """
            {"type":"session","version":1,"startedAt":"2026-11-25T09:00:00Z","source":"/dev/ttyUSB0","quantity":"dc voltage","unit":"V","seek":"peak","dwell":2,"tool":"slugpeak 0.1.0"}
            {"type":"adjuster","t":0,"name":"T1 top","action":"begin","before":0.5,"after":null,"gainDb":null}
            {"type":"reading","t":0,"value":0.5,"smoothed":0.5,"best":0.5,"bestSigma":0.001,"ofBest":1,"trend":"steady","condition":"ok"}
            {"type":"reading","t":1,"value":1.0,"smoothed":1.0,"best":1.0,"bestSigma":0.001,"ofBest":1,"trend":"rising","condition":"ok"}
            {"type":"adjuster","t":1,"name":"T1 top","action":"done","before":0.5,"after":1.0,"gainDb":6.02}
            {"type":"end","t":1,"readings":2,"reason":"quit"}
            """;

    @TempDir
    private Path folder;

    private Path log;

    @BeforeEach
    void writeLog() throws Exception {
        log = Files.writeString(folder.resolve("tuesday.jsonl"), LOG);
    }

    private static CommandRun report(Object... args) {
        return CommandRun.of(
                new ReportCommand(),
                java.util.Arrays.stream(args).map(Object::toString).toArray(String[]::new));
    }

    @Test
    void pageLiesBesideTheLog() throws Exception {
        CommandRun run = report(log);
        assertEquals(0, run.exitCode(), run.err());
        String page = Files.readString(folder.resolve("tuesday.html"));
        assertTrue(page.contains("<td>T1 top</td>") && page.contains("+6.02 dB"), page);
        assertTrue(run.err().contains("wrote"), run.err());
    }

    @Test
    void plainFormsGoToStandardOutput() {
        assertTrue(report(log, "--markdown").out().contains("| T1 top |"));
        assertTrue(report(log, "--csv").out().contains("1.0,1.0,1.0,1.0,ok,T1 top,tuesday.jsonl"));
        assertFalse(Files.exists(folder.resolve("tuesday.html")));
    }

    @Test
    void cutLogIsReportedAsFarAsItGoes() throws Exception {
        Files.writeString(log, LOG.substring(0, LOG.length() - 80));
        assertEquals(0, report(log).exitCode());
        assertTrue(Files.readString(folder.resolve("tuesday.html")).contains("NOTE: the log stops"));
    }

    @Test
    void badLineIsNamedAndPassedOver() throws Exception {
        Files.writeString(log, LOG.replace("\"t\":1,\"value\":1.0", "rubbish"));
        CommandRun run = report(log);
        assertEquals(0, run.exitCode());
        assertTrue(run.err().contains("line 4 was passed over"), run.err());
    }

    @Test
    void twoLogsAreComparedAndOnlyThatWhereAsked() throws Exception {
        Path later = Files.writeString(
                folder.resolve("later.jsonl"),
                LOG.replace("2026-11-25", "2027-11-25").replace("6.02", "0.01"));
        assertEquals(0, report(log, later).exitCode());
        String page = Files.readString(folder.resolve("tuesday.html"));
        assertTrue(page.contains("Then and now") && page.contains("<td>-6.01 dB</td>") && page.contains("Instrument"));
        String only = report("--compare", log, later, "--markdown").out();
        assertTrue(only.contains("| T1 top | gained, all rounds |") && !only.contains("Instrument"), only);
        String figures = report("--compare", log, later, "--csv").out();
        assertTrue(figures.contains("adjuster,T1 top,\"gained, all rounds\",dB,6.02,0.01,-6.01"), figures);
        assertTrue(report(log, later, "--csv").out().startsWith("seconds,"), "without it CSV stays the readings");
        assertEquals(2, report("--compare", log).exitCode());
    }

    @Test
    void whoIsToldOfIsSaidBeforeThePageIsWritten() throws Exception {
        Files.writeString(
                log, LOG.replaceFirst("\n", "\n{\"type\":\"mark\",\"t\":0,\"text\":\"owner=A. Customer\"}\n"));
        CommandRun run = report(log);
        assertTrue(run.err().contains("tells of persons (owner)"), run.err());
        assertTrue(run.err().indexOf("tells of persons") < run.err().indexOf("wrote"), run.err());
        assertTrue(Files.readString(folder.resolve("tuesday.html")).contains("A. Customer"));
    }

    @Test
    void refusesWhatItCannotDo() throws Exception {
        assertEquals(2, report().exitCode());
        assertEquals(2, report(log, "--csv", "--markdown").exitCode());
        assertEquals(1, report(log, "--out", log).exitCode(), "a log is never replaced");
        assertEquals(1, report(folder.resolve("none.jsonl")).exitCode());
        assertEquals(1, report(log, "--out", folder.resolve("no/such.html")).exitCode());
        Path other = Files.writeString(folder.resolve("other.jsonl"), "hello\n");
        CommandRun run = report(other);
        assertEquals(1, run.exitCode());
        assertTrue(run.err().contains("is no session log"), run.err());
        assertEquals(LOG, Files.readString(log), "the log was not touched");
    }
}
