package org.slugpeak.cli.display;

import java.util.Locale;

/** What a key, or a foot pedal that poses as a keyboard, can ask for. Immutable; any thread may use it. */
public enum KeyAction {
    /** Put a mark into the log. */
    MARK("mark", "space"),
    /** Record the adjuster and begin the next one. */
    NEXT("next", "n,enter,pagedown"),
    /** Forget the best and begin the same adjuster again. */
    AGAIN("again", "r,pageup"),
    /** Leave the adjuster as it is and go on. */
    SKIP("skip", "k"),
    /** Turn the simulated hand to the left. */
    TURN_LEFT("turn-left", "left"),
    /** Turn the simulated hand to the right. */
    TURN_RIGHT("turn-right", "right"),
    /** Sound on or off. */
    SOUND("sound", "s"),
    /** Sound louder. */
    LOUDER("louder", "+,up"),
    /** Sound softer. */
    SOFTER("softer", "-,down"),
    /** End the session. */
    QUIT("quit", "q"),
    /** Ctrl-C; no key can be bound to it. */
    INTERRUPT("interrupt", ""),
    /** The terminal has gone; no key can be bound to it. */
    HANG_UP("hang-up", "");

    private final String word;
    private final String usualKeys;

    KeyAction(String word, String usualKeys) {
        this.word = word;
        this.usualKeys = usualKeys;
    }

    /**
     * The word in the key map on the screen and on the command line.
     *
     * @return one word, lower case
     */
    public String word() {
        return word;
    }

    /** Separated by commas; empty where no key can be bound. */
    String usualKeys() {
        return usualKeys;
    }

    boolean isBindable() {
        return !usualKeys.isEmpty();
    }

    static KeyAction ofWord(String word) {
        for (KeyAction action : values()) {
            if (action.isBindable() && action.word.equals(word.toLowerCase(Locale.ROOT))) {
                return action;
            }
        }
        throw new IllegalArgumentException("no key action is called '" + word + "'");
    }
}
