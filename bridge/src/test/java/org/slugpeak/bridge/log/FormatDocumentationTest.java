package org.slugpeak.bridge.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.testkit.EveryRecord;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionRecord;

/** docs/records.md, the writer and the reader say the same, since all go by one table. */
class FormatDocumentationTest {

    private static final Pattern WORD = Pattern.compile("`([^`]+)`");

    private final RecordForms forms = new RecordForms(new TestWords());
    private final AdviceTopics topics = new AdviceTopics(new TestWords());

    /** The cells of each row of one table of the page, without the head. */
    private static List<List<String>> table(String head) throws IOException {
        Path page = Path.of(System.getProperty("slugpeak.shared"), "..", "docs", "records.md");
        List<List<String>> rows = new ArrayList<>();
        boolean inside = false;
        for (String line : Files.readAllLines(page)) {
            if (inside && line.startsWith("| ")) {
                rows.add(List.of(line.substring(2, line.length() - 2).split(" \\| ")));
            }
            inside = line.startsWith(head) || (inside && line.startsWith("|"));
        }
        return rows;
    }

    @Test
    void thePageHasEveryTypeWithItsFieldsInTheirOrderAndUnits() throws IOException {
        List<String> written = forms.all().stream()
                .map(form -> "`" + form.type() + "` " + fields(form))
                .toList();
        assertEquals(19, written.size());
        assertEquals(
                written,
                table("| type |").stream()
                        .map(row -> row.get(0) + " " + row.get(1))
                        .toList());
    }

    private static String fields(RecordForm<?> form) {
        return form.columns().stream()
                .map(column -> "`" + column.name().getValue() + "` (" + kind(column) + ")")
                .collect(Collectors.joining(", "));
    }

    private static String kind(Column<?> column) {
        return column.words().isEmpty()
                ? column.unit().code()
                : column.words().stream().map(word -> "`" + word + "`").collect(Collectors.joining(", "));
    }

    @Test
    void thePageHasEveryTopicWithTheUnitOfItsAmount() throws IOException {
        Map<String, String> onThePage = new TreeMap<>();
        for (List<String> row : table("| topic |")) {
            Matcher word = WORD.matcher(row.get(0));
            while (word.find()) {
                onThePage.put(word.group(1), row.get(1));
            }
        }
        Map<String, String> written = new TreeMap<>();
        topics.all().forEach(topic -> written.put(topic.word(), topic.unit().code()));
        assertTrue(written.size() > 50, written.size() + " topics");
        assertEquals(written, onThePage);
    }

    /** The quick line of a reading is the line of its form. */
    @Test
    void theLineOfAReadingIsThatOfItsForm() {
        SomeRecords some = new SomeRecords(7);
        int readings = 0;
        for (int i = 0; i < 5_000; i++) {
            if (some.next() instanceof ReadingTaken it) {
                readings++;
                ByteArrayOutputStream slow = new ByteArrayOutputStream();
                LineWriter line = new LineWriter(slow);
                forms.reading.write(line, it).end();
                assertEquals(slow.toString(StandardCharsets.UTF_8), line(it));
            }
        }
        assertTrue(readings > 500, readings + " readings");
    }

    /** What cannot be told from the log is kept for its words, under a topic that is on the page. */
    @Test
    void everyKindIsWrittenAndReadBackOrKeptForItsWords() throws BadLine {
        int whole = 0;
        for (SessionRecord record : EveryRecord.list()) {
            byte[] line = line(record).getBytes(StandardCharsets.UTF_8);
            LogEntry entry = new RecordReader().read(line, 0, line.length).orElseThrow();
            assertEquals(record.tNanos(), entry.record().tNanos());
            assertEquals(
                    line(record).contains("\"topic\""),
                    !forms.all().stream()
                            .anyMatch(form -> form.type().getValue().equals(entry.word())));
            whole += entry.record().equals(record) ? 1 : 0;
            assertTrue(
                    entry.record() instanceof Logged
                            || entry.record().getClass().equals(record.getClass()),
                    record + " was read as " + entry.record());
        }
        assertTrue(whole >= 60, whole + " were read back whole");
    }

    private static String line(SessionRecord record) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new RecordWriter(out, new TestWords()).write(record);
        return out.toString(StandardCharsets.UTF_8);
    }
}
