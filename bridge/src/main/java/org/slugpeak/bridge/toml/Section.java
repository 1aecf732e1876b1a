package org.slugpeak.bridge.toml;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * One table of a file, read key by key. A value of the wrong kind is noted with its line and what was expected, and
 * the fallback is used so that the other mistakes are found too; {@link #close} notes the keys that nobody asked for. One
 * thread at a time.
 */
public final class Section implements AutoCloseable {

    private final TomlTable table;
    private final String name;
    private final int line;
    private final Problems problems;
    private final Set<String> asked = new TreeSet<>();

    Section(TomlTable table, String name, int line, Problems problems) {
        this.table = table;
        this.name = name;
        this.line = line;
        this.problems = problems;
    }

    /**
     * The keys of a table that says by itself what its keys are.
     *
     * @return all that are there
     */
    public Set<String> keys() {
        return Set.copyOf(table.keySet());
    }

    /**
     * Whether the key is there, of whatever kind.
     *
     * @param key its name
     * @return true where it is
     */
    public boolean has(String key) {
        return raw(key) != null;
    }

    /**
     * Whether a key stands for a table, where it may also be something else.
     *
     * @param key its name
     * @return true where a table is written
     */
    public boolean isTable(String key) {
        return raw(key) instanceof TomlTable;
    }

    /**
     * Whether a key stands for a certain word, where it may also be something else than a text.
     *
     * @param key its name
     * @param word the word
     * @return true where the word is written
     */
    public boolean is(String key, String word) {
        return word.equals(raw(key));
    }

    /**
     * A text that need not be there.
     *
     * @param key its name
     * @return empty where it is not there or is no text
     */
    public Optional<String> text(String key) {
        return of(key, String.class, "text in quotes");
    }

    /**
     * A text that must be there.
     *
     * @param key its name
     * @return the text; empty text where it is missing, which has been noted
     */
    public String requiredText(String key) {
        return text(key).orElseGet(() -> missing(key, "text in quotes", ""));
    }

    /**
     * A truth.
     *
     * @param key its name
     * @param fallback where it is not there
     * @return true or false
     */
    public boolean flag(String key, boolean fallback) {
        return of(key, Boolean.class, "true or false").orElse(fallback);
    }

    /**
     * A number that need not be there.
     *
     * @param key its name
     * @return in the unit that the key names; empty where it is not there or is no finite number
     */
    public OptionalDouble number(String key) {
        Object value = raw(key);
        if (value == null) {
            return OptionalDouble.empty();
        }
        if (value instanceof Number number && Double.isFinite(number.doubleValue())) {
            return OptionalDouble.of(number.doubleValue());
        }
        wrong(key, "a number", value);
        return OptionalDouble.empty();
    }

    /**
     * A whole number within limits.
     *
     * @param key its name
     * @param least smallest allowed
     * @param most largest allowed
     * @param fallback where it is not there
     * @return the number
     */
    public int whole(String key, int least, int most, int fallback) {
        Object value = raw(key);
        if (value == null) {
            return fallback;
        }
        if (value instanceof Long number && number >= least && number <= most) {
            return number.intValue();
        }
        wrong(key, "a whole number from " + least + " to " + most, value);
        return fallback;
    }

    /**
     * A whole number that must be there.
     *
     * @param key its name
     * @param least smallest allowed
     * @param most largest allowed
     * @return the number; the least where it is missing, which has been noted
     */
    public int requiredWhole(String key, int least, int most) {
        return has(key) ? whole(key, least, most, least) : missing(key, "a whole number from " + least, least);
    }

    /**
     * One of some words.
     *
     * @param key its name
     * @param choices what each word means
     * @param fallback where it is not there
     * @param <T> what is chosen
     * @return the meaning
     */
    public <T> T choice(String key, Map<String, T> choices, T fallback) {
        Optional<String> written = text(key);
        if (written.isEmpty()) {
            return fallback;
        }
        T chosen = choices.get(written.get());
        if (chosen == null) {
            problem(
                    key,
                    "'" + written.get() + "' is not known for '" + key + "'"
                            + Suggestion.didYouMean(written.get(), choices.keySet()));
            return fallback;
        }
        return chosen;
    }

    /**
     * Texts in square brackets.
     *
     * @param key its name
     * @param fallback where it is not there
     * @return the texts
     */
    public List<String> texts(String key, List<String> fallback) {
        Object value = raw(key);
        if (value == null) {
            return fallback;
        }
        if (value instanceof TomlArray array
                && !array.isEmpty()
                && array.toList().stream().allMatch(String.class::isInstance)) {
            return array.toList().stream().map(String.class::cast).toList();
        }
        wrong(key, "a list of texts in square brackets", value);
        return fallback;
    }

    /**
     * Numbers in square brackets, or one number.
     *
     * @param key its name
     * @return the numbers; empty where it is not there or is something else
     */
    public List<Double> numbers(String key) {
        Object value = raw(key);
        if (value instanceof Number number) {
            return List.of(number.doubleValue());
        }
        if (value instanceof TomlArray array
                && !array.isEmpty()
                && array.toList().stream().allMatch(Number.class::isInstance)) {
            return array.toList().stream()
                    .map(each -> ((Number) each).doubleValue())
                    .toList();
        }
        if (value != null) {
            wrong(key, "a number, or numbers in square brackets", value);
        }
        return List.of();
    }

    /**
     * A number above zero that need not be there.
     *
     * @param key its name
     * @return in the unit that the key names; empty where it is not there or is no such number
     */
    public OptionalDouble positive(String key) {
        OptionalDouble number = number(key);
        if (number.isPresent() && !(number.getAsDouble() > 0)) {
            wrong(key, "greater than 0", number.getAsDouble());
            return OptionalDouble.empty();
        }
        return number;
    }

    /**
     * A number above zero that must be there.
     *
     * @param key its name
     * @return the number, in the unit that the key names; 1 where it is missing or no such number, which has been noted
     */
    public double requiredPositive(String key) {
        return positive(key).orElseGet(() -> missing(key, "a number greater than 0", 1.0));
    }

    /**
     * Tables in double square brackets.
     *
     * @param key its name
     * @return one for each; empty where there are none
     */
    public List<Section> tables(String key) {
        Object value = raw(key);
        if (value instanceof TomlArray array && array.toList().stream().allMatch(TomlTable.class::isInstance)) {
            return IntStream.range(0, array.size())
                    .mapToObj(i -> new Section(
                            array.getTable(i),
                            inner(key),
                            array.inputPositionOf(i).line(),
                            problems))
                    .toList();
        }
        if (value != null) {
            wrong(key, "tables [[" + inner(key) + "]]", value);
        }
        return List.of();
    }

    /**
     * A table within this one.
     *
     * @param key its name
     * @return empty where it is not there or is no table
     */
    public Optional<Section> table(String key) {
        return of(key, TomlTable.class, "a table [" + inner(key) + "]")
                .map(inner -> new Section(inner, inner(key), position(key).line(), problems));
    }

    /**
     * A table within this one, empty where it is not there.
     *
     * @param key its name
     * @return the table
     */
    public Section tableOrEmpty(String key) {
        return table(key).orElseGet(() -> new Section(Toml.parse(""), inner(key), line, problems));
    }

    /**
     * Notes a mistake of meaning.
     *
     * @param key whose value is wrong
     * @param text one line: what was found and what was expected
     */
    public void problem(String key, String text) {
        problems.add(position(key), text);
    }

    /** Notes each key that nobody asked for: it is a slip of the pen, or belongs elsewhere. */
    @Override
    public void close() {
        for (String key : table.keySet()) {
            if (!asked.contains(key)) {
                problem(key, "'" + key + "' is not known " + place() + Suggestion.didYouMean(key, asked));
            }
        }
    }

    private <T> Optional<T> of(String key, Class<T> type, String expected) {
        Object value = raw(key);
        if (value == null) {
            return Optional.empty();
        }
        if (type.isInstance(value)) {
            return Optional.of(type.cast(value));
        }
        wrong(key, expected, value);
        return Optional.empty();
    }

    private @Nullable Object raw(String key) {
        asked.add(key);
        return table.get(List.of(key));
    }

    private <T> T missing(String key, String expected, T instead) {
        if (!has(key)) {
            problems.add(line, "'" + key + "' is missing " + place() + ": expected " + expected);
        }
        return instead;
    }

    private void wrong(String key, String expected, Object found) {
        problem(key, "'" + key + "' must be " + expected + ", not " + shown(found));
    }

    /** As somebody would write it; what has no short form is named by its kind. */
    private static String shown(Object found) {
        if (found instanceof TomlTable) {
            return "a table";
        }
        if (found instanceof TomlArray list) {
            return list.isEmpty() ? "an empty list" : "a list";
        }
        return found instanceof String ? "'" + found + "'" : found.toString();
    }

    private String place() {
        return name.isEmpty() ? "at the top of a " + problems.kind() : "in [" + name + "]";
    }

    private String inner(String key) {
        return name.isEmpty() ? key : name + "." + key;
    }

    private TomlPosition position(String key) {
        TomlPosition position = table.inputPositionOf(List.of(key));
        return position == null ? TomlPosition.positionAt(Math.max(1, line), 1) : position;
    }
}
