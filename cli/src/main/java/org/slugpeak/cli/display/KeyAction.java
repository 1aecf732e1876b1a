package org.slugpeak.cli.display;

import java.util.Locale;
import org.slugpeak.core.word.Refused;

/**
 * What a key, or a foot pedal that poses as a keyboard, can ask for, in the order of the key map on the screen: where that is too
 * long for the window, the last but one are left out first. Immutable; any thread may use it.
 */
public enum KeyAction {
    /** Record the adjuster and begin the next one. */
    NEXT("next", "r,n,enter,pagedown"),
    /** Put a mark into the log. */
    MARK("mark", "space"),
    /** Say that what was asked for has been done. */
    DONE("done", "d"),
    /** Turn the simulated hand to the left. */
    TURN_LEFT("turn-left", "left"),
    /** Turn the simulated hand to the right. */
    TURN_RIGHT("turn-right", "right"),
    /** Forget the best and begin the same adjuster again. */
    AGAIN("again", "b,pageup"),
    /** Go back to the step before, where a plan is carried out. */
    PREVIOUS("previous", "p,backspace"),
    /** Leave the adjuster as it is and go on. */
    SKIP("skip", "k"),
    /** Take the resting reading, with the generator off. */
    REST("rest", "0"),
    /** Check whether the reading follows the generator. */
    LEVEL("level", "x"),
    /** Say, before it is done, that the generator will be halved. */
    CUT("cut", "h"),
    /** Start the next of the other checks. */
    CHECK("check", "c"),
    /** Drop the check that is under way. */
    DROP("drop", "escape"),
    /** Say that the fault that was suspected has been looked after. */
    REPAIRED("repaired", "f"),
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

    static KeyAction ofWord(String word) throws Refused {
        for (KeyAction action : values()) {
            if (action.isBindable() && action.word.equals(word.toLowerCase(Locale.ROOT))) {
                return action;
            }
        }
        throw new Refused("no key action is called '" + word + "'");
    }
}
