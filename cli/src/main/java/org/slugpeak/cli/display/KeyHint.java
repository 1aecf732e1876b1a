package org.slugpeak.cli.display;

import java.util.List;

/**
 * What an action is asked for with. Immutable; any thread may use it.
 *
 * @param action what is asked for
 * @param keys their names, the usual one first; one at least
 */
record KeyHint(KeyAction action, List<String> keys) {

    KeyHint(KeyAction action, String key) {
        this(action, List.of(key));
    }

    /** For the foot of a page. */
    String phrase() {
        return keys.get(0) + " " + action.word();
    }

    /** All of them. */
    String names() {
        return String.join(" ", keys);
    }

    /** For lines that tell of all keys. */
    String explained() {
        return names() + "  " + action.meaning();
    }

    /** The same keys, by the word of what they come to now. */
    KeyHint with(KeyAction other) {
        return new KeyHint(other, keys);
    }
}
