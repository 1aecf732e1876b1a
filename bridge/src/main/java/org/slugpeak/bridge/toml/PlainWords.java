package org.slugpeak.bridge.toml;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in a restorer's words what the parser found; what it is not prepared for it passes on. Stateless. */
final class PlainWords {

    /**
     * A kind of mistake.
     *
     * @param pattern how the parser says it
     * @param words how it is said here, with the groups of the pattern
     */
    private record Mistake(Pattern pattern, String words) {}

    private static final List<Mistake> MISTAKES = List.of(
            mistake(
                    "Unexpected (.+?), expected a value",
                    "after the '=' comes text in quotes, a number, true, false" + " or a list in brackets, not $1"),
            mistake(
                    "Unexpected end of (?:line|input), expected [\"'].* or a character",
                    "the quotes are not closed: \" is" + " expected at the end of the text"),
            mistake("Unexpected end of (?:line|input), expected ].*", "the bracket is not closed: ] is expected"),
            mistake("(.+) previously defined at line (\\d+),.*", "'$1' stands in line $2 already: expected once"));

    private PlainWords() {}

    private static Mistake mistake(String pattern, String words) {
        return new Mistake(Pattern.compile(pattern), words);
    }

    /** One line about a mistake, from the parser's message. */
    static String of(String message) {
        String line = message.lines().findFirst().orElse("not TOML");
        for (Mistake mistake : MISTAKES) {
            Matcher matcher = mistake.pattern().matcher(line);
            if (matcher.matches()) {
                return matcher.replaceAll(mistake.words());
            }
        }
        return line;
    }
}
