package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.bridge.source.BadLog;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionRecord;

/**
 * Logs of released versions stay readable. What is compared is what the log says when it is read back, not what the peak finder
 * of today would say of it. Files are never changed; a new version adds a folder.
 */
class GoldenLogTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    v1/tarnfield-54a-first-if.jsonl | V | peak | X
                    """)
    void saysWhatItSaidWhenItWasWritten(String name, String unit, String seek, String said) throws Exception {
        List<SessionRecord> records = new ArrayList<>();
        try (LogReader reader = LogReader.open(path(name), (line, problem) -> {
            throw new AssertionError(line + ": " + problem);
        })) {
            assertEquals(unit, reader.start().measurand().unit());
            assertEquals(seek, reader.start().settings().seek().code());
            for (Optional<SessionRecord> next = reader.next(); next.isPresent(); next = reader.next()) {
                records.add(next.get());
            }
            assertEquals(said, summary(records, reader.ending()));
        }
    }

    @Test
    void everyGoldenLogIsInTheTable() throws Exception {
        try (Stream<Path> files = Files.list(path("v1"))) {
            assertEquals(4, files.count());
        }
    }

    /** Last best, last time, how many of each kind of record, and how the log ends. */
    private static String summary(List<SessionRecord> records, LogEnding ending) {
        TreeMap<String, Integer> counts = new TreeMap<>();
        double best = Double.NaN;
        for (SessionRecord record : records) {
            counts.merge(record.getClass().getSimpleName(), 1, Integer::sum);
            if (record instanceof ReadingTaken taken) {
                best = taken.best();
            }
        }
        long last = records.get(records.size() - 1).tNanos();
        return String.format(Locale.ROOT, "best %s, last %d ns, %s, %s", best, last, counts, ending);
    }

    private static Path path(String name) throws IOException, URISyntaxException, BadLog {
        URL url = GoldenLogTest.class.getResource("/logs/" + name);
        if (url == null) {
            throw new IOException("no resource /logs/" + name);
        }
        return Path.of(url.toURI());
    }
}
