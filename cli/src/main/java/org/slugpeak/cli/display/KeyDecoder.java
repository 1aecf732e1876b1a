package org.slugpeak.cli.display;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Turns what a terminal sends into names of keys: ECMA-48 control sequences; function keys as the terminfo entries of xterm, rxvt and the
 * Linux console list them (from memory); buttons of a mouse as xterm reports them (mode 1006). What it does not know is nothing, however
 * long it is. One thread at a time.
 */
final class KeyDecoder {

    private static final char ESCAPE = 27;
    private static final char BELL = 7;
    private static final char CONTROL_Z = 26;

    /** The name of the key that nobody can bind: it stops the program, as everywhere. */
    static final String SUSPEND = "ctrl-z";

    /** What begins a string that a terminal sends by itself: DCS, SOS, OSC, PM, APC. */
    private static final String STRINGS = "PX]^_";

    private static final int MOUSE_BUTTONS = 9;
    private static final Map<String, String> SEQUENCES = sequences();
    private static final Map<Character, String> NAMED =
            Map.of(' ', "space", '\r', "enter", '\n', "enter", '\t', "tab", '\b', "backspace", (char) 127, "backspace");

    /** Of the Linux console, after two brackets. */
    private static final Map<Character, String> OF_CONSOLE =
            Map.of('A', "f1", 'B', "f2", 'C', "f3", 'D', "f4", 'E', "f5");

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
            names.put("[" + functionKeys[i] + ";2~", "f" + (i + 13));
        }
        for (int i = 0; i < 4; i++) {
            names.put("O" + (char) ('P' + i), "f" + (i + 1));
            names.put("[1;2" + (char) ('P' + i), "f" + (i + 13));
        }
        int[] higher = {25, 26, 28, 29, 31, 32, 33, 34};
        for (int i = 0; i < higher.length; i++) {
            names.put("[" + higher[i] + "~", "f" + (i + 13));
        }
        return names;
    }

    static boolean isKeyName(String name) {
        return (name.length() == 1 && !Character.isISOControl(name.charAt(0)))
                || NAMED.containsValue(name)
                || SEQUENCES.containsValue(name)
                || isMouse(name)
                || name.equals("escape");
    }

    static boolean isMouse(String name) {
        return name.matches("mouse[1-9]");
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
        String name = character == CONTROL_Z ? SUSPEND : NAMED.get(character);
        if (name != null) {
            return Optional.of(name);
        }
        return Character.isISOControl(character)
                ? Optional.empty()
                : Optional.of(String.valueOf(character).toLowerCase(Locale.ROOT));
    }

    private Optional<String> continued(char character) {
        if (character == ESCAPE) {
            pending.setLength(1);
            return Optional.empty();
        }
        pending.append(character);
        char kind = pending.charAt(1);
        boolean opened = pending.length() == 2;
        if (STRINGS.indexOf(kind) >= 0) {
            pending.setLength(2);
            return character == BELL ? over(Optional.empty()) : Optional.empty();
        }
        if (kind != '[' && kind != 'O') {
            return over(Optional.empty());
        }
        boolean ofConsole = pending.length() > 2 && pending.charAt(2) == '[';
        if (opened || (ofConsole && pending.length() == 3) || character < '@' || character > '~') {
            return Optional.empty();
        }
        return over(
                ofConsole
                        ? Optional.ofNullable(OF_CONSOLE.get(character))
                        : Optional.ofNullable(SEQUENCES.get(pending.substring(1)))
                                .or(() -> mouse(pending.toString())));
    }

    private Optional<String> over(Optional<String> key) {
        pending.setLength(0);
        return key;
    }

    /** A button that goes down; where the pointer is does not matter. */
    private static Optional<String> mouse(String sequence) {
        if (!sequence.matches("\u001b\\[<\\d{1,3};\\d{1,5};\\d{1,5}M")) {
            return Optional.empty();
        }
        int code = Integer.parseInt(sequence.substring(3, sequence.indexOf(';')));
        int button = code < 64 ? code + 1 : code < 128 ? code - 64 + 4 : code - 128 + 8;
        return button <= MOUSE_BUTTONS ? Optional.of("mouse" + button) : Optional.empty();
    }

    /** Says that nothing more came for a while: a lone escape is a key of its own. */
    Optional<String> pause() {
        boolean alone = pending.length() == 1;
        return over(alone ? Optional.of("escape") : Optional.empty());
    }
}
