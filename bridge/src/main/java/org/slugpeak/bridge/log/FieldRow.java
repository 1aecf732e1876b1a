package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.SerializableString;
import java.util.List;
import java.util.Map;
import org.slugpeak.core.word.Coded;

/** The fields of one line, taken one after the other in the order of its form. One thread at a time. */
final class FieldRow {

    private final List<? extends Column<?>> columns;
    private final JsonObject line;
    private int next;

    FieldRow(List<? extends Column<?>> columns, JsonObject line) {
        this.columns = columns;
        this.line = line;
    }

    private SerializableString name() {
        return columns.get(next++).name();
    }

    /** Whether the next field is in the line. */
    boolean hasNext() {
        return line.has(columns.get(next).name());
    }

    /** Passes the next field over. */
    void skip() {
        next++;
    }

    /** A time in seconds, as nanoseconds. */
    long nanos() throws BadLine {
        return line.nanos(name());
    }

    /** A number; NaN where it is null or missing. */
    double number() throws BadLine {
        return line.number(name());
    }

    long count() throws BadLine {
        return line.count(name());
    }

    String text() throws BadLine {
        return line.text(name());
    }

    /** Whether it is there and true. */
    boolean flag() {
        return line.flag(name());
    }

    /** A constant by its own word. */
    <E extends Enum<E> & Coded> E coded(Class<E> type) throws BadLine {
        SerializableString name = name();
        String word = line.text(name);
        return Coded.find(type, word)
                .orElseThrow(() -> BadLine.impossible("no " + name.getValue() + " is called '" + word + "'"));
    }

    /** What a word of a fixed list means. */
    <T> T word(Map<String, T> words) throws BadLine {
        SerializableString name = name();
        String word = line.text(name);
        T value = words.get(word);
        if (value == null) {
            throw new BadLine("has an unknown '" + name.getValue() + "': " + word);
        }
        return value;
    }
}
