package org.slugpeak.cli.display;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Turns what a terminal sends into names of keys (ECMA-48 control sequences, and the forms of function keys that xterm's
 * terminfo entry lists). One thread at a time.
 */
final class KeyDecoder {

    private static final char ESCAPE = 27;
    private static final Map<String, String> SEQUENCES = sequences();
    private static final Map<Character, String> NAMED =
            Map.of(' ', "space", '\r', "enter", '\n', "enter", '\t', "tab", '\b', "backspace", (char) 127, "backspace");

    private final StringBuilder pending = new StringBuilder();

    private static Map<String, String> sequences() {
        Map<String, String> names = new HashMap<>();
        String[] finals = {"A=up", "B=down", "C=right", "D=left", "H=home", "F=end"};
        for (String each : finals) {
            names.put("[" + each.charAt(0), each.substring(2));
            names.put("O" + each.charAt(0), each.substring(2));
        }
        String[] numbered = {"1=home", "2=insert", "3=delete", "4=end", "5=pageup", "6=pagedown"};
        for (String each : numbered) {
            names.put("[" + each.charAt(0) + "~", each.substring(2));
        }
        int[] functionKeys = {11, 12, 13, 14, 15, 17, 18, 19, 20, 21, 23, 24};
        for (int i = 0; i < functionKeys.length; i++) {
            names.put("[" + functionKeys[i] + "~", "f" + (i + 1));
        }
        for (int i = 0; i < 4; i++) {
            names.put("O" + (char) ('P' + i), "f" + (i + 1));
        }
        return names;
    }

    static boolean isKeyName(String name) {
        return (name.length() == 1 && !Character.isISOControl(name.charAt(0)))
                || NAMED.containsValue(name)
                || SEQUENCES.containsValue(name)
                || name.equals("escape");
    }

    /** Takes one character; gives the key once it is complete. */
    Optional<String> accept(char character) {
        if (pending.length() > 0) {
            return continued(character);
        }
        if (character == ESCAPE) {
            pending.append(character);
            return Optional.empty();
        }
        return named(character);
    }

    private static Optional<String> named(char character) {
        String name = NAMED.get(character);
        if (name != null) {
            return Optional.of(name);
        }
        return Character.isISOControl(character)
                ? Optional.empty()
                : Optional.of(String.valueOf(character).toLowerCase(Locale.ROOT));
    }

    private Optional<String> continued(char character) {
        pending.append(character);
        boolean opened = pending.length() == 2;
        if (opened && character != '[' && character != 'O') {
            pending.setLength(0);
            return named(character);
        }
        if (opened || character < '@' || character > '~') {
            return Optional.empty();
        }
        String name = SEQUENCES.get(pending.substring(1));
        pending.setLength(0);
        return Optional.ofNullable(name);
    }

    /** Says that nothing more came for a while: a lone escape is a key of its own. */
    Optional<String> pause() {
        boolean alone = pending.length() == 1;
        pending.setLength(0);
        return alone ? Optional.of("escape") : Optional.empty();
    }
}
