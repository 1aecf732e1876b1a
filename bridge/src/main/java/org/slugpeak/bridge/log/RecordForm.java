package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.io.SerializedString;
import java.util.ArrayList;
import java.util.List;

/**
 * All that the format says of one kind of record: its type, its fields in order, and what is made of them when they are read back.
 * Writer, reader and the check of the documentation go by it. Immutable.
 *
 * @param <T> what is written and read
 * @param type the word that a line of it begins with
 * @param columns its fields, in the order in which they are written and read
 * @param maker makes it from its fields
 */
record RecordForm<T>(SerializedString type, List<Column<T>> columns, Maker<T> maker) {

    /** Makes a record from the fields of a line, taking them in order. */
    @FunctionalInterface
    interface Maker<T> {
        T make(FieldRow row) throws BadLine;
    }

    RecordForm {
        columns = List.copyOf(columns);
    }

    @SafeVarargs
    static <T> RecordForm<T> of(String type, Maker<T> maker, Column<T>... columns) {
        List<Column<T>> inOrder = new ArrayList<>();
        for (Column<T> column : columns) {
            inOrder.add(column);
        }
        return new RecordForm<>(new SerializedString(type), inOrder, maker);
    }

    LineWriter write(LineWriter line, T from) {
        line.begin(type);
        for (Column<T> column : columns) {
            column.write(line, from);
        }
        return line;
    }

    T read(JsonObject line) throws BadLine {
        return maker.make(new FieldRow(columns, line));
    }

    /** The sentence that a line keeps beside its figures; empty where the form has none. */
    String sentence(JsonObject line) throws BadLine {
        for (Column<T> column : columns) {
            if (column.unit() == Unit.SENTENCE) {
                return line.text(column.name());
            }
        }
        return "";
    }
}
