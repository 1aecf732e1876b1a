package org.slugpeak.bridge.toml;

import java.util.function.Function;
import org.slugpeak.bridge.source.BadConfiguration;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/** Reads a TOML file that a user wrote. All methods may be called by any thread. */
public final class TomlFile {

    private TomlFile() {}

    /**
     * Reads a whole file and finds every mistake in it.
     *
     * @param file name for the messages
     * @param kind what the file is, for the messages: a plan, a description
     * @param text what is in it
     * @param reader makes a value of the top table
     * @param <T> the value
     * @return the value
     * @throws BadConfiguration with one line a mistake: file, line, what was found and what was expected
     */
    public static <T> T read(String file, String kind, String text, Function<Section, T> reader)
            throws BadConfiguration {
        Problems problems = new Problems(file, kind);
        Nesting.lineTooDeep(text)
                .ifPresent(
                        line -> problems.add(line, "brackets within brackets, more than " + Nesting.DEEPEST + " deep"));
        EmptyRun.lineTooFar(text)
                .ifPresent(line -> problems.add(
                        line,
                        "more than " + EmptyRun.LONGEST + " lines in a row that are blank or remarks: take some out"));
        problems.throwIfAny();
        TomlParseResult toml = Toml.parse(text);
        toml.errors()
                .forEach(error -> problems.add(error.position(), PlainWords.of(String.valueOf(error.getMessage()))));
        problems.throwIfAny();
        T value;
        try (Section top = new Section(toml, "", 1, problems)) {
            value = reader.apply(top);
        }
        problems.throwIfAny();
        return value;
    }
}
