package org.slugpeak.core.peak.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the command line asks for: words like {@code hours=10}. */
final class Options {

    private final Map<String, String> given;

    private Options(Map<String, String> given) {
        this.given = given;
    }

    /**
     * Reads the command line.
     *
     * @param known words that mean something
     * @throws IllegalArgumentException for any other
     */
    static Options of(String[] arguments, String... known) {
        List<String> names = List.of(known);
        return new Options(Arrays.stream(arguments).collect(Collectors.toMap(a -> key(a, names), a -> value(a))));
    }

    private static String key(String argument, List<String> names) {
        String key = argument.substring(0, Math.max(0, argument.indexOf('=')));
        if (!names.contains(key)) {
            throw new IllegalArgumentException(
                    "'" + argument + "' is not understood; write name=value with one of " + String.join(", ", names));
        }
        return key;
    }

    private static String value(String argument) {
        return argument.substring(argument.indexOf('=') + 1);
    }

    String word(String name, String usual) {
        return given.getOrDefault(name, usual);
    }

    double number(String name, double usual) {
        String word = given.get(name);
        return word == null ? usual : Double.parseDouble(word);
    }
}
