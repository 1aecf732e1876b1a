package org.slugpeak.cli.display;

/**
 * A key and what it asks for. Immutable; any thread may use it.
 *
 * @param action what it asks for
 * @param key its name
 */
record KeyHint(KeyAction action, String key) {

    /** For the foot of a page. */
    String phrase() {
        return key + " " + action.word();
    }

    /** For the page that tells of all keys. */
    String explained() {
        return key + "  " + action.meaning();
    }
}
