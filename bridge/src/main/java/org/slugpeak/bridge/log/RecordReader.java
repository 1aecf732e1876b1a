package org.slugpeak.bridge.log;

import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.slugpeak.core.session.SessionRecord;

/** Reads lines back into records, one at a time, by the forms of the format. One thread at a time. */
final class RecordReader {

    private final RecordForms forms = new RecordForms(record -> "");
    private final AdviceTopics topics = new AdviceTopics(record -> "");
    private final Map<String, RecordForm<?>> byType =
            forms.all().stream().collect(Collectors.toMap(form -> form.type().getValue(), Function.identity()));
    private final JsonObject object = new JsonObject(exact());

    /** The record of a line, with the words that stand in it; empty for a type that is not known here. */
    Optional<LogEntry> read(byte[] bytes, int from, int to) throws BadLine {
        object.read(bytes, from, to);
        String type = object.text(JsonFields.TYPE);
        RecordForm<?> form = byType.get(type);
        if (form == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(entry(type, form));
        } catch (DateTimeParseException e) {
            throw BadLine.impossible(String.valueOf(e.getMessage()));
        }
    }

    private LogEntry entry(String type, RecordForm<?> form) throws BadLine {
        Object line = form.read(object);
        if (line instanceof SessionRecord record) {
            return new LogEntry(record, type, form.sentence(object));
        }
        if (line instanceof AdviceLine advice) {
            return new LogEntry(topics.record(advice), advice.topic(), advice.text());
        }
        return new LogEntry(((MarkLine) line).said(), type, "");
    }

    private Set<String> exact() {
        return forms.all().stream()
                .flatMap(form -> form.columns().stream())
                .filter(column -> column.unit() == Unit.SECONDS || column.unit() == Unit.COUNT)
                .map(column -> column.name().getValue())
                .collect(Collectors.toUnmodifiableSet());
    }
}
