package org.slugpeak.cli.display;

import java.util.Locale;
import org.slugpeak.cli.words.KeyPhrase;
import org.slugpeak.core.word.Refused;

/**
 * What a key, or a foot pedal that poses as a keyboard, can ask for. {@link Foot} says which are shown when.
 * Immutable; any thread may use it.
 */
public enum KeyAction {
    /** Do the obvious next thing; nothing where nothing is obvious. */
    GO("go", "enter,f13", KeyPhrase.GO),
    /** Record the adjuster and begin the next one. */
    NEXT("next", "r,n,pagedown", KeyPhrase.NEXT),
    /** Put a mark into the log. */
    MARK("mark", "space", KeyPhrase.MARK),
    /** Say that what was asked for has been done. */
    DONE("done", "d", KeyPhrase.DONE),
    /** Turn the simulated hand to the left. */
    TURN_LEFT("turn-left", "left", KeyPhrase.TURN_LEFT),
    /** Turn the simulated hand to the right. */
    TURN_RIGHT("turn-right", "right", KeyPhrase.TURN_RIGHT),
    /** Forget the best and begin the same adjuster again. */
    AGAIN("again", "b,pageup", KeyPhrase.AGAIN),
    /** Go back to the step before, where a plan is carried out. */
    PREVIOUS("previous", "p,backspace", KeyPhrase.PREVIOUS),
    /** Leave the adjuster as it is and go on. */
    SKIP("skip", "k", KeyPhrase.SKIP),
    /** Take the resting reading, with the generator off. */
    REST("rest", "0", KeyPhrase.REST),
    /** Check whether the reading follows the generator. */
    LEVEL("level", "x", KeyPhrase.LEVEL),
    /** Say, before it is done, that the generator will be halved. */
    CUT("cut", "h", KeyPhrase.CUT),
    /** Start the next of the other checks. */
    CHECK("check", "c", KeyPhrase.CHECK),
    /** Drop the check that is under way. */
    DROP("drop", "escape", KeyPhrase.DROP),
    /** Type what a counter at the generator shows. */
    COUNTER("counter", "g", KeyPhrase.COUNTER),
    /** Say that the fault that was suspected has been looked after. */
    REPAIRED("repaired", "f", KeyPhrase.REPAIRED),
    /** Sound on or off. */
    SOUND("sound", "s", KeyPhrase.SOUND),
    /** Sound louder. */
    LOUDER("louder", "+,up", KeyPhrase.LOUDER),
    /** Sound softer. */
    SOFTER("softer", "-,down", KeyPhrase.SOFTER),
    /** Show where the page for a browser is. */
    PAGE("page", "w", KeyPhrase.PAGE),
    /** Show what every key does. */
    KEYS("keys", "?", KeyPhrase.KEYS),
    /** End the session. */
    QUIT("quit", "q", KeyPhrase.QUIT),
    /** Ctrl-C; no key can be bound to it. */
    INTERRUPT("interrupt", "", KeyPhrase.QUIT),
    /** The terminal has gone; no key can be bound to it. */
    HANG_UP("hang-up", "", KeyPhrase.QUIT);

    private final String word;
    private final String usualKeys;
    private final KeyPhrase meaning;

    KeyAction(String word, String usualKeys, KeyPhrase meaning) {
        this.meaning = meaning;
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

    /** What it does, for whoever asks. */
    String meaning() {
        return meaning.of();
    }

    /** Separated by commas; empty where no key can be bound. */
    String usualKeys() {
        return usualKeys;
    }

    boolean isBindable() {
        return !usualKeys.isEmpty();
    }

    static KeyAction ofWord(String word) throws Refused {
        for (KeyAction action : values()) {
            if (action.isBindable() && action.word.equals(word.toLowerCase(Locale.ROOT))) {
                return action;
            }
        }
        throw new Refused("no key action is called '" + word + "'");
    }
}
