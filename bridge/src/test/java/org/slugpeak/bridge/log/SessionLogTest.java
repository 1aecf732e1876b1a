package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;

class SessionLogTest {

    private static final String LINE = "{\"type\":\"overload-cleared\",\"t\":0.0}\n";

    private final List<String> warnings = new ArrayList<>();

    @TempDir
    Path folder;

    @Test
    void aFlushedLineIsInTheFile() throws Exception {
        Path file = folder.resolve("bench.jsonl");
        try (SessionLog log = SessionLog.create(file, new TestWords(), warnings::add)) {
            log.take(new OverloadCleared(0));
            log.flush();
            assertEquals(LINE, Files.readString(file));
        }
        assertEquals(List.of(), warnings);
    }

    @Test
    void aLogInWhichNothingWasWrittenIsNotInTheWayOfTheNextTry() throws Exception {
        Path file = folder.resolve("refused.jsonl");
        SessionLog.create(file, new TestWords(), warnings::add).close();
        assertFalse(Files.exists(file));
        SessionLog.create(file, new TestWords(), warnings::add).close();
        assertEquals(List.of(), warnings);
    }

    @Test
    void linesOfOnePassAreWrittenAtOnce() {
        FullDisk disk = new FullDisk(1 << 20);
        try (SessionLog log = log(disk)) {
            for (int i = 0; i < 100; i++) {
                log.take(new OverloadCleared(i));
            }
            log.flush();
            log.flush();
            assertEquals(1, disk.writes());
        }
        assertEquals(100, disk.lines().size());
    }

    @Test
    void manyLinesDoNotWaitForTheEndOfThePass() {
        FullDisk disk = new FullDisk(1 << 24);
        try (SessionLog log = log(disk)) {
            for (int i = 0; i < 10_000; i++) {
                log.take(new OverloadCleared(i));
            }
            assertTrue(disk.length() > 300_000, "written so far: " + disk.length());
        }
    }

    @Test
    @Timeout(60)
    void aMarkIsForcedToTheDiskWhileTheSessionGoesOn() throws Exception {
        FullDisk disk = new FullDisk(1 << 20);
        try (SessionLog log = log(disk)) {
            log.take(new Said.Note(0, "first IF done"));
            disk.awaitForces(1);
            assertEquals(1, disk.lines().size());
        }
    }

    @Test
    @Timeout(60)
    void aReadingIsForcedToTheDiskWithoutBeingAskedFor() throws Exception {
        FullDisk disk = new FullDisk(1 << 20);
        try (SessionLog log = log(disk)) {
            log.take(new OverloadCleared(0));
            log.flush();
            disk.awaitForces(1);
        }
        assertEquals(1, disk.forces(), "nothing new, nothing to force");
    }

    @Test
    void closingForcesWhatIsLeft() {
        FullDisk disk = new FullDisk(1 << 20);
        SessionLog log = log(disk);
        log.take(new OverloadCleared(0));
        log.close();
        log.close();
        log.take(new OverloadCleared(1));
        assertEquals(LINE, disk.text());
        assertTrue(disk.forces() > 0);
    }

    @Test
    void aDiskThatDoesNotConfirmIsToldOnce() {
        FullDisk disk = new FullDisk(1 << 20);
        disk.refuseForce();
        SessionLog log = log(disk);
        log.take(new OverloadCleared(0));
        log.close();
        assertEquals(
                List.of("the disk does not confirm what is written to bench.jsonl (Input/output error):"
                        + " a power cut may cost more than the last second"),
                warnings);
    }

    @Test
    void anInterruptDoesNotCostALine() throws Exception {
        Path file = folder.resolve("bench.jsonl");
        try (SessionLog log = SessionLog.create(file, new TestWords(), warnings::add)) {
            Thread.currentThread().interrupt();
            log.take(new OverloadCleared(0));
            log.flush();
        }
        assertTrue(Thread.interrupted(), "the interrupt is passed on");
        assertEquals(LINE, Files.readString(file));
        assertEquals(List.of(), warnings);
    }

    @Nested
    class WhereAFileIsToBeMade {

        @Test
        void aFileThatIsThereIsNeverTouched() throws Exception {
            Path file = Files.writeString(folder.resolve("bench.jsonl"), "precious");
            assertEquals(
                    file + " is there already and a session log never overwrites:"
                            + " choose another name or move it away",
                    message(file));
            assertEquals("precious", Files.readString(file));
        }

        @Test
        void aMissingFolderIsSaid() {
            Path file = folder.resolve("attic/bench.jsonl");
            assertEquals("cannot make " + file + ": its folder is not there; make the folder first", message(file));
        }

        private String message(Path file) {
            return assertThrows(BadLog.class, () -> SessionLog.create(file, new TestWords(), warnings::add))
                    .getMessage();
        }
    }

    @Nested
    class WhenTheDiskIsFull {

        private final FullDisk disk = new FullDisk(2 * LINE.length() + 10);
        private final SessionLog log = log(disk);

        @Test
        void theFileEndsWithAWholeLineAndTheUserIsWarnedOnce() {
            for (int i = 0; i < 5; i++) {
                log.take(new OverloadCleared(0));
                log.flush();
            }
            assertEquals(LINE + LINE, disk.text());
            assertTrue(log.isStuck());
            assertEquals(
                    List.of("cannot write to bench.jsonl (No space left on device): measuring goes on without a"
                            + " record; free some space and the record goes on"),
                    warnings);
            log.close();
            assertFalse(log.isWhole());
        }

        @Test
        void nothingIsMissingWhenSpaceComesBackSoon() {
            takeAndFlush(0, 5);
            disk.setRoom(1 << 20);
            takeAndFlush(5, 7);
            assertFalse(log.isStuck());
            assertEquals(cleared(0, 7), records(disk));
            assertEquals("bench.jsonl is written again: nothing is missing", warnings.get(1));
            log.close();
            assertTrue(log.isWhole());
        }

        @Test
        void aTornLineIsCompletedWhereItCannotBeCutOff() {
            disk.refuseTruncation();
            takeAndFlush(0, 5);
            assertEquals(10, disk.text().length() - 2 * LINE.length(), "torn on the disk");
            disk.setRoom(1 << 20);
            takeAndFlush(5, 6);
            assertEquals(cleared(0, 6), records(disk));
        }

        @Test
        void whatIsTooMuchToKeepIsCountedInTheLog() {
            takeAndFlush(0, 200_000);
            disk.setRoom(1 << 25);
            takeAndFlush(200_000, 200_001);
            List<SessionRecord> records = records(disk);
            String gap = disk.lines().get(records.size() - 1);
            int missing = 200_002 - records.size();
            assertTrue(missing > 50_000, "missing: " + missing);
            assertTrue(gap.contains("\"topic\":\"log-gap\",\"text\":\"LogGap\""), gap);
            assertTrue(gap.endsWith("\"amount\":" + missing + ".0}"), gap);
            assertEquals("bench.jsonl is written again: " + missing + " records are missing", warnings.get(1));
        }

        @Test
        void closingKeepsWhatThereIsAndSaysThatTheEndIsMissing() {
            takeAndFlush(0, 5);
            log.take(new SessionEnd(0, 5, EndReason.Known.INTERRUPTED));
            log.close();
            assertEquals(2, records(disk).size());
            assertEquals(
                    List.of("bench.jsonl ends early: its last records could not be written; what is in it can be read"),
                    warnings.subList(1, warnings.size()));
        }

        private void takeAndFlush(int from, int to) {
            for (int i = from; i < to; i++) {
                log.take(new OverloadCleared(i));
                if (i % 100 < 10) {
                    log.flush();
                }
            }
            log.flush();
        }
    }

    @Test
    void aDiskThatIsFullAtTheNthByteNeverLeavesATornLine() {
        for (int room = 0; room < 4 * LINE.length(); room++) {
            FullDisk disk = new FullDisk(room);
            SessionLog log = log(disk);
            for (int i = 0; i < 4; i++) {
                log.take(new OverloadCleared(0));
            }
            log.flush();
            assertEquals(LINE.repeat(room / LINE.length()), disk.text(), "room for " + room);
            disk.setRoom(1 << 20);
            log.close();
            assertEquals(LINE.repeat(4), disk.text(), "room for " + room);
        }
    }

    private SessionLog log(FullDisk disk) {
        return new SessionLog("bench.jsonl", disk, new TestWords(), warnings::add);
    }

    private static List<SessionRecord> cleared(int from, int to) {
        return LongStream.range(from, to)
                .<SessionRecord>mapToObj(OverloadCleared::new)
                .toList();
    }

    private static List<SessionRecord> records(FullDisk disk) {
        return disk.lines().stream()
                .map(SessionLogTest::record)
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<SessionRecord> record(String line) {
        try {
            byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
            return new RecordReader().read(bytes, 0, bytes.length).map(LogEntry::record);
        } catch (BadLine e) {
            throw new AssertionError(line, e);
        }
    }
}
