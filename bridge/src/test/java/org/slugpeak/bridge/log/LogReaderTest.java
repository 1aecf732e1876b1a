package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

class LogReaderTest {

    private static final SessionStart START = new SessionStart(
            1,
            Instant.parse("2026-11-25T07:30:00Z"),
            "/dev/ttyUSB0",
            Measurand.DC_VOLTS,
            PeakSettings.defaults(),
            "slugpeak 0.1.0");
    private static final List<SessionRecord> RECORDS = List.of(
            START,
            new Said.Note(0, "first IF, top \u03a9"),
            new Said.Note(1_000_000_001, "second IF"),
            new SessionEnd(1_000_000_001, 2, EndReason.Known.DONE));

    private final List<String> bad = new ArrayList<>();

    private int files;

    @TempDir
    Path folder;

    @Test
    void readsBackWhatWasWritten() throws Exception {
        Read read = read(bytes(RECORDS));
        assertEquals(RECORDS, read.records());
        assertEquals(new LogEnding.Complete((SessionEnd) RECORDS.get(3)), read.ending());
    }

    @Test
    void aLogCutAtAnyByteLosesNothingButTheLineThatIsCut() throws Exception {
        byte[] whole = bytes(RECORDS);
        int firstLine = bytes(RECORDS.subList(0, 1)).length;
        for (int length = firstLine; length < whole.length; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            int lines = lineEnds(cut);
            boolean onlyTheLineEndIsMissing = whole[length] == '\n';
            int expected = onlyTheLineEndIsMissing ? lines + 1 : lines;
            Read read = read(cut);
            assertEquals(RECORDS.subList(0, expected), read.records(), "cut at " + length);
            if (expected == RECORDS.size()) {
                assertTrue(read.ending() instanceof LogEnding.Complete, "cut at " + length);
            } else {
                boolean torn = !onlyTheLineEndIsMissing && cut[length - 1] != '\n';
                LogEnding.Truncated ending = (LogEnding.Truncated) read.ending();
                assertEquals(torn ? lines + 1 : expected, ending.line(), "cut at " + length);
                assertEquals(torn, !ending.text().isEmpty(), "cut at " + length);
            }
        }
        assertEquals(List.of(), bad);
    }

    @Test
    void aLogCutWithinItsFirstLineIsRefused() throws Exception {
        byte[] first = bytes(RECORDS.subList(0, 1));
        for (int length = 17; length < first.length - 2; length++) {
            assertEquals(
                    "FILE is cut off within its first line: nothing was recorded in it",
                    refusal(Arrays.copyOf(first, length)));
        }
    }

    @Test
    void tellsWhereATornLogStops() throws Exception {
        byte[] whole = bytes(RECORDS.subList(0, 3));
        LogEnding.Truncated torn = (LogEnding.Truncated)
                read(Arrays.copyOf(whole, whole.length - 5)).ending();
        assertEquals(3, torn.line());
        assertTrue(torn.text().startsWith("{\"type\":\"mark\",\"t\":1.000000001,\"text\":\"s"), torn.text());
        assertEquals(new LogEnding.Truncated(3, ""), read(whole).ending());
    }

    @Test
    void aTailOfZeroesAsAPowerCutLeavesItIsTorn() throws Exception {
        byte[] whole = bytes(RECORDS.subList(0, 3));
        Read read = read(Arrays.copyOf(whole, whole.length + 512));
        assertEquals(RECORDS.subList(0, 3), read.records());
        assertEquals(4, ((LogEnding.Truncated) read.ending()).line());
    }

    @Test
    void aBadLineInTheMiddleIsToldAndPassedOver() throws Exception {
        String text = new String(bytes(RECORDS), StandardCharsets.UTF_8);
        int second = text.indexOf('\n') + 1;
        Read read = read((text.substring(0, second) + "{\"type\":\"ma\0\0\0\n\n" + text.substring(second))
                .getBytes(StandardCharsets.UTF_8));
        assertEquals(RECORDS, read.records());
        assertEquals(List.of("2: is not a whole JSON object", "3: is not a JSON object"), bad);
        assertTrue(read.ending() instanceof LogEnding.Complete);
    }

    @Test
    void aLineLongerThanTheBufferIsRead() throws Exception {
        List<SessionRecord> records = List.of(START, new Said.Note(0, "x".repeat(300_000)), new Said.Note(1, "y"));
        assertEquals(records, read(bytes(records)).records());
    }

    @Test
    void recordsBehindAnEndMakeTheLogOpenAgain() throws Exception {
        List<SessionRecord> records =
                List.of(START, new SessionEnd(0, 0, EndReason.Known.DONE), new Said.Note(1, "and yet"));
        assertEquals(new LogEnding.Truncated(3, ""), read(bytes(records)).ending());
    }

    /** A bit that flips on a bad card costs its line, or two if it joins them. */
    @Test
    void aFlippedBitCostsAtMostTwoLines() throws Exception {
        byte[] whole = bytes(RECORDS);
        int firstLine = bytes(RECORDS.subList(0, 1)).length;
        for (int bit = 8 * firstLine; bit < 8 * whole.length; bit += 5) {
            byte[] flipped = whole.clone();
            flipped[bit / 8] ^= (byte) (1 << bit % 8);
            List<SessionRecord> records = new ArrayList<>(read(flipped).records());
            int read = records.size();
            records.retainAll(RECORDS);
            assertTrue(records.size() >= RECORDS.size() - 2, "bit " + bit + ": " + records);
            assertTrue(read <= RECORDS.size(), "bit " + bit);
        }
    }

    @Nested
    class WhatIsNoLog {

        @Test
        void anEmptyFile() throws Exception {
            assertEquals("FILE is empty: nothing was recorded in it", refusal(""));
        }

        @Test
        void aText() throws Exception {
            String message = "FILE is no session log: its first line is no session record;"
                    + " give a .jsonl file that was written with --log or --json";
            assertEquals(message, refusal("seconds,volts\n0,1\n"));
            assertEquals(message, refusal("{\"type\":\"mark\",\"t\":0,\"text\":\"x\"}\n"));
            assertEquals(message, refusal("{\"type\":\"photo\"}\n"));
            assertEquals(message, refusal("\0\1\2\3\n"));
            assertEquals(message, refusal("x"));
        }

        @Test
        void aLogOfALaterVersion() throws Exception {
            assertEquals(
                    "FILE is in record version 7, and this slugpeak reads up to version 1:"
                            + " use the slugpeak that wrote it, or a later one",
                    refusal("{\"type\":\"session\",\"version\":7,\"begun\":\"yesterday\"}\n"));
        }

        @Test
        void aFileThatIsNotThere() {
            Path file = folder.resolve("gone.jsonl");
            assertEquals(
                    "there is no file " + file + ": check the name",
                    assertThrows(BadLog.class, () -> LogReader.open(file, (line, problem) -> {}))
                            .getMessage());
        }

        @Test
        void aFolder() {
            assertEquals(
                    folder + " is a folder: give a session log",
                    assertThrows(BadLog.class, () -> LogReader.open(folder, (line, problem) -> {}))
                            .getMessage());
        }
    }

    private record Read(List<SessionRecord> records, LogEnding ending) {}

    private Read read(byte[] bytes) throws BadLog, IOException {
        List<SessionRecord> records = new ArrayList<>();
        try (LogReader reader = LogReader.open(file(bytes), (line, problem) -> bad.add(line + ": " + problem))) {
            records.add(reader.start());
            for (Optional<LogEntry> next = reader.next(); next.isPresent(); next = reader.next()) {
                records.add(next.get().record());
            }
            return new Read(records, reader.ending());
        }
    }

    private String refusal(String text) throws IOException {
        return refusal(text.getBytes(StandardCharsets.UTF_8));
    }

    private String refusal(byte[] bytes) throws IOException {
        Path file = file(bytes);
        return assertThrows(BadLog.class, () -> LogReader.open(file, (line, problem) -> {}))
                .getMessage()
                .replace(file.toString(), "FILE");
    }

    /** A new file each time: writing an old one again makes some file systems wait for the disk. */
    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("bench-" + files++ + ".jsonl"), bytes);
    }

    private static byte[] bytes(List<SessionRecord> records) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonLines lines = new JsonLines(out, new TestWords())) {
            records.forEach(lines::take);
        }
        return out.toByteArray();
    }

    private static int lineEnds(byte[] bytes) {
        int count = 0;
        for (byte each : bytes) {
            count += each == '\n' ? 1 : 0;
        }
        return count;
    }
}
