package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;

/**
 * One field of a kind of record. Immutable.
 *
 * @param <T> what is written
 * @param name in the line
 * @param unit what it counts in
 * @param words those that it can be, where these are few; else empty
 * @param isThere whether it is in the line; where it is not, it is left out
 * @param cell writes it
 */
record Column<T>(SerializableString name, Unit unit, List<String> words, Predicate<T> isThere, Cell<T> cell) {

    /** Writes one field of a record. */
    @FunctionalInterface
    interface Cell<T> {
        void write(LineWriter line, SerializableString name, T from);
    }

    private Column(String name, Unit unit, Cell<T> cell) {
        this(new SerializedString(name), unit, List.of(), any -> true, cell);
    }

    /** A time, exact to the nanosecond. */
    static <T> Column<T> seconds(String name, ToLongFunction<T> nanos) {
        return new Column<>(name, Unit.SECONDS, (line, as, from) -> line.time(as, nanos.applyAsLong(from)));
    }

    /** The time that every record but the first begins with. */
    static <T> Column<T> t(ToLongFunction<T> nanos) {
        return seconds(JsonFields.T.getValue(), nanos);
    }

    static <T> Column<T> number(String name, Unit unit, ToDoubleFunction<T> value) {
        return new Column<>(name, unit, (line, as, from) -> line.number(as, value.applyAsDouble(from)));
    }

    static <T> Column<T> count(String name, ToLongFunction<T> value) {
        return new Column<>(name, Unit.COUNT, (line, as, from) -> line.count(as, value.applyAsLong(from)));
    }

    static <T> Column<T> text(String name, Function<T, String> value) {
        return new Column<>(name, Unit.TEXT, (line, as, from) -> line.text(as, value.apply(from)));
    }

    /** A sentence for a person, which a log keeps beside the figures. */
    static <T> Column<T> sentence(String name, Function<T, String> words) {
        return new Column<>(name, Unit.SENTENCE, (line, as, from) -> line.text(as, words.apply(from)));
    }

    /** One of a few words. */
    static <T> Column<T> word(String name, List<String> words, Function<T, String> value) {
        return new Column<>(
                new SerializedString(name),
                Unit.WORD,
                List.copyOf(words),
                any -> true,
                (line, as, from) -> line.text(as, value.apply(from)));
    }

    /** True, or left out. */
    static <T> Column<T> flag(String name, Predicate<T> value) {
        return new Column<>(new SerializedString(name), Unit.FLAG, List.of(), value, (line, as, from) -> line.flag(as));
    }

    /** The same, left out of some records. */
    Column<T> where(Predicate<T> there) {
        return new Column<>(name, unit, words, there, cell);
    }

    void write(LineWriter line, T from) {
        if (isThere.test(from)) {
            cell.write(line, name, from);
        }
    }
}
