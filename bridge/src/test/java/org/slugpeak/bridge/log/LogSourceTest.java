package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.bridge.testkit.ShortDetail;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;

class LogSourceTest {

    private static final String HEADER = "{\"type\":\"session\",\"version\":1,\"startedAt\":\"2026-11-25T07:30:00Z\","
            + "\"source\":\"/dev/ttyUSB0\",\"quantity\":\"dc voltage\",\"unit\":\"V\",\"seek\":\"zero\",\"dwell\":1.5,"
            + "\"tool\":\"slugpeak 0.1.0\"}\n";
    private static final String READING =
            "{\"type\":\"reading\",\"t\":0.02,\"value\":-0.5,\"smoothed\":-0.5,\"best\":null,"
                    + "\"ofBest\":null,\"trend\":\"steady\",\"condition\":\"ok\"}\n";

    private final List<String> heard = new ArrayList<>();

    @TempDir
    Path folder;

    @Test
    void tellsWhatWasRecorded() throws Exception {
        LogSource source = open(HEADER);
        assertEquals(Measurand.DC_VOLTS, source.measurand());
        assertEquals("zero", source.start().settings().seek().code());
        assertEquals(1500, source.start().settings().dwell().toMillis());
        assertEquals(
                new SourceDescription.Log(file().toString(), Instant.parse("2026-11-25T07:30:00Z"), "/dev/ttyUSB0"),
                source.description());
        assertEquals(Optional.empty(), source.ending());
    }

    @Test
    void playsWhatTheSourceAndTheUserDidAndNothingThatWasConcluded() throws Exception {
        play(HEADER
                + READING
                + "{\"type\":\"passed\",\"t\":0.02,\"best\":1,\"bestAt\":0,\"dropDb\":0.3}\n"
                + "{\"type\":\"link\",\"t\":1.0,\"state\":\"lost\",\"detail\":\"unplugged\"}\n"
                + "{\"type\":\"mark\",\"t\":0.02,\"text\":\"first IF\"}\n"
                + "{\"type\":\"mark\",\"t\":0.02,\"text\":\"seek: dip\"}\n"
                + "{\"type\":\"adjuster\",\"t\":0.02,\"name\":\"T2 top\",\"action\":\"begin\"}\n"
                + "{\"type\":\"adjuster\",\"t\":0.02,\"name\":\"T2 top\",\"action\":\"done\",\"gainDb\":2}\n"
                + "{\"type\":\"photo\",\"t\":0.02}\n"
                + "{\"type\":\"reading\",\"t\":2,\"value\":null,\"trend\":\"steady\",\"condition\":\"over-range\"}\n"
                + "{\"type\":\"end\",\"t\":2,\"readings\":2,\"reason\":\"done\"}\n");
        assertEquals(
                List.of(
                        "reading 20000000 -0.5 ok",
                        "link 1000000000 lost unplugged",
                        "note first IF",
                        "command Find[seek=DIP]",
                        "adjuster T2 top",
                        "reading 2000000000 0.0 over-range"),
                heard);
    }

    @Test
    void tellsOfLinesThatAreNoRecords() throws Exception {
        LogEnding ending = play(HEADER + READING + "rubbish\n" + READING + READING.substring(0, 30));
        assertEquals(
                List.of(
                        "reading 20000000 -0.5 ok",
                        "garbled line 3: is not a whole JSON object",
                        "reading 20000000 -0.5 ok",
                        "garbled line 5: is cut off; everything before it was read"),
                heard);
        assertEquals(new LogEnding.Truncated(5, READING.substring(0, 30)), ending);
    }

    @Test
    void aLogOfALaterVersionIsRefused() {
        assertEquals(
                "FILE is in record version 2, and this slugpeak reads up to version 1:"
                        + " use the slugpeak that wrote it, or a later one",
                assertThrows(BadLog.class, () -> open(HEADER.replace("\"version\":1", "\"version\":2")))
                        .getMessage()
                        .replace(file().toString(), "FILE"));
    }

    @Test
    void longLogsComeInPasses() throws Exception {
        LogSource source = open(HEADER + READING.repeat(3_000));
        Listener listener = new Listener(heard);
        assertEquals(Progress.MORE, source.poll(0, listener));
        assertEquals(Progress.MORE, source.poll(0, listener));
        assertEquals(Progress.ENDED, source.poll(0, listener));
        assertEquals(Progress.ENDED, source.poll(0, listener));
        assertEquals(3_000, heard.size());
    }

    private LogEnding play(String text) throws Exception {
        try (LogSource source = open(text)) {
            Listener listener = new Listener(heard);
            while (source.poll(0, listener) != Progress.ENDED) {}
            return source.ending().orElseThrow();
        }
    }

    private LogSource open(String text) throws Exception {
        return LogSource.open(Files.write(file(), text.getBytes(StandardCharsets.UTF_8)));
    }

    private Path file() {
        return folder.resolve("bench.jsonl");
    }

    private record Listener(List<String> heard) implements SourceListener {

        @Override
        public void reading(Reading reading) {
            heard.add("reading " + reading.tNanos() + " " + reading.value() + " "
                    + reading.condition().code());
        }

        @Override
        public void link(long tNanos, Link.State state, LinkDetail detail) {
            heard.add("link " + tNanos + " " + state.code() + " " + ShortDetail.of(detail));
        }

        @Override
        public void garbled(String where, String problem) {
            heard.add("garbled " + where + ": " + problem);
        }

        @Override
        public void note(String text) {
            heard.add("note " + text);
        }

        @Override
        public void command(Instruction instruction) {
            heard.add("command " + instruction);
        }

        @Override
        public void nextAdjuster(String name) {
            heard.add("adjuster " + name);
        }
    }
}
