package org.slugpeak.cli.display;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.slugpeak.core.word.Refused;

/**
 * Keys that somebody chose for an action. Immutable; any thread may use it.
 *
 * @param action what they ask for
 * @param keys their names, one or more
 */
record KeyBinding(KeyAction action, List<String> keys) {

    /**
     * Reads what was chosen.
     *
     * @param text {@code ACTION=KEY} or {@code ACTION=KEY,KEY}, for example {@code next=f13,pagedown}
     * @return the binding
     * @throws Refused where it is neither, or the action or a key is unknown
     */
    static KeyBinding parse(String text) throws Refused {
        int equals = text.indexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
            throw new Refused("'" + text + "' is not ACTION=KEY, for example next=pagedown");
        }
        String list = text.substring(equals + 1);
        KeyAction action = KeyAction.ofWord(text.substring(0, equals));
        for (String key : parts(list)) {
            if (!KeyDecoder.isKeyName(key.toLowerCase(Locale.ROOT))) {
                throw new Refused(
                        "no key is called '" + key
                                + "'; use a character, or space, enter, left, pagedown, f1 to f24, mouse1 to mouse9 and the like");
            }
        }
        return new KeyBinding(action, names(list));
    }

    /** The names in a list; a lone comma is the key of that name. */
    static List<String> names(String list) {
        return Stream.of(parts(list)).map(key -> key.toLowerCase(Locale.ROOT)).toList();
    }

    private static String[] parts(String list) {
        return list.equals(",") ? new String[] {list} : list.split(",", -1);
    }
}
