package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/**
 * Logs of released versions stay readable. What is compared is what the log says when it is read back, not what the peak finder
 * of today would say of it. Files are never changed; a new version adds a folder.
 */
class GoldenLogTest {

    /** The expected figures were taken from the files with another JSON library. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    v1/every-kind-of-record.jsonl | mV dip | best 1.25, last 300000000 ns, closed | Adjuster=2, Changed=1, Drift=1, Held=1, Hinted=1, NoPeak=1, Note=1, Overload=1, OverloadCleared=1, Passed=1, ReadingTaken=3, Returned=1, SessionEnd=1, TwoPeaks=1, Weak=1
                    v1/quillmere-fm-8-discriminator.jsonl | V zero | best 0.0, last 15888611801 ns, closed | Held=1, Passed=1, ReadingTaken=160, Returned=1, SessionEnd=1
                    v1/tarnfield-54a-first-if.jsonl | V peak | best 3.950326075444983, last 19900665697 ns, closed | Adjuster=1, Held=1, Hinted=1, Note=1, Passed=2, ReadingTaken=200, Returned=1, SessionEnd=1
                    v1/tarnfield-54a-power-cut.jsonl | peak | best 3.9963720914274647, last 16506728978 ns, line 126, torn | Changed=2, Hinted=2, Overload=2, OverloadCleared=2, Passed=1, ReadingTaken=115
                    """)
    void saysWhatItSaidWhenItWasWritten(String name, String settings, String figures, String kinds) throws Exception {
        List<SessionRecord> records = new ArrayList<>();
        try (LogReader reader = LogReader.open(path(name), (line, problem) -> {
            throw new AssertionError(line + ": " + problem);
        })) {
            assertEquals(settings, settings(reader.start()));
            for (Optional<LogEntry> next = reader.next(); next.isPresent(); next = reader.next()) {
                records.add(next.get().record());
            }
            assertEquals(figures, figures(records, reader.ending()));
            assertEquals("{" + kinds + "}", kinds(records).toString());
        }
    }

    /** With the words that stand in it every line is written again byte for byte; the log written by hand has fields of its own. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "v1/quillmere-fm-8-discriminator.jsonl",
                "v1/tarnfield-54a-first-if.jsonl",
                "v1/tarnfield-54a-power-cut.jsonl"
            })
    void isWrittenAgainByteForByte(String name) throws Exception {
        ByteArrayOutputStream again = new ByteArrayOutputStream();
        String[] words = {""};
        RecordWriter writer = new RecordWriter(again, record -> words[0]);
        try (LogReader reader = LogReader.open(path(name), (line, problem) -> {})) {
            writer.write(reader.start());
            reader.drainTo(entry -> {
                words[0] = entry.text();
                writer.write(entry.record());
            });
        }
        String whole = Files.readString(path(name));
        assertEquals(whole.substring(0, whole.lastIndexOf('\n') + 1), again.toString(StandardCharsets.UTF_8));
    }

    @Test
    void everyGoldenLogIsInTheTable() throws Exception {
        try (Stream<Path> files = Files.list(path("v1"))) {
            assertEquals(4, files.count());
        }
    }

    private static String settings(SessionStart start) {
        return (start.measurand().unit() + " " + start.settings().seek().code()).strip();
    }

    private static String figures(List<SessionRecord> records, LogEnding ending) {
        double best = Double.NaN;
        for (SessionRecord record : records) {
            best = record instanceof ReadingTaken taken ? taken.best() : best;
        }
        long last = records.get(records.size() - 1).tNanos();
        return "best " + best + ", last " + last + " ns, " + end(ending);
    }

    private static String end(LogEnding ending) {
        if (ending instanceof LogEnding.Truncated truncated) {
            return "line " + truncated.line() + (truncated.text().isEmpty() ? ", cut" : ", torn");
        }
        return "closed";
    }

    private static Map<String, Integer> kinds(List<SessionRecord> records) {
        Map<String, Integer> counts = new TreeMap<>();
        records.forEach(record -> counts.merge(record.getClass().getSimpleName(), 1, Integer::sum));
        return counts;
    }

    private static Path path(String name) throws IOException, URISyntaxException {
        URL url = GoldenLogTest.class.getResource("/logs/" + name);
        if (url == null) {
            throw new IOException("no resource /logs/" + name);
        }
        return Path.of(url.toURI());
    }
}
