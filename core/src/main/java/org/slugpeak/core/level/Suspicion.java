package org.slugpeak.core.level;

import java.util.Locale;
import org.slugpeak.core.safety.SafeHands;

/**
 * What a sign in the readings may mean. Never a certainty: each names the next thing to try. The signs are common practice, no
 * source. Immutable; any thread may use it.
 */
public enum Suspicion {
    /** The reading does not follow the generator. */
    TOO_STRONG("too strong a signal, the gain control hides the peak", "cut the generator to a fifth, check again"),
    /** The response is centred elsewhere. */
    WRONG_IF("another intermediate frequency than the set is made for", "look up the IF before any slug is turned"),
    /** No image where it should be. */
    IMAGE(
            "tuned to the image",
            "the other trimmer setting (less capacitance; more if the oscillator is below), prove it"),
    /** The response is crossed too quickly. */
    HARMONIC("a harmonic of the generator", "set the generator itself to the dial frequency, and read the level again"),
    /** Too wide a response, or two distant maxima. */
    SLUG_END("a slug at the wrong end of its coil", "find the other maximum, usually the outer one; count the turns"),
    /** The reading jumps by itself. */
    MICA("a mica capacitor that jumps", SafeHands.leaveOff("renew it before aligning")),
    /** The padder has no effect. */
    PADDER("padder open or shorted", SafeHands.leaveOff("measure the padder and its lead")),
    /** A slug has no effect. */
    WINDING("open winding, or a broken slug", SafeHands.leaveOff("measure the winding")),
    /** The meter takes more current than it should. */
    LOADING("the meter loads the circuit", SafeHands.at("fit a meter of 10 Mohm")),
    /** The response is narrower than the circuits can be. */
    REGENERATION("the IF stage feeds back", SafeHands.leaveOff("check screens, bypasses and can earths")),
    /** The reading wobbles without a signal. */
    HUM("mains hum in the reading", SafeHands.leaveOff("check filter capacitors, meter ground"));

    /** Topic of the advice that what was suspected is so no longer. */
    public static final String CLEARED = "no-longer-possible";

    private static final String TOPIC = "possible-";

    private final String cause;
    private final String next;

    Suspicion(String cause, String next) {
        this.cause = cause;
        this.next = next;
    }

    /**
     * The topic of its advice.
     *
     * @return {@code possible-} and the name, lower case, hyphenated
     */
    public String topic() {
        return TOPIC + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Whether an advice names a suspicion.
     *
     * @param topic of any advice
     * @return true for what {@link #topic()} gives
     */
    public static boolean isTopic(String topic) {
        return topic.startsWith(TOPIC);
    }

    /**
     * What the user is told when a check has shown that it is not, or no longer, so.
     *
     * @return one line
     */
    public String clearedText() {
        return "no longer suspected: " + cause;
    }

    /**
     * What the user is told.
     *
     * @return one line: possible cause and the next thing to try
     */
    public String text() {
        return "possible: " + cause + "; next: " + next;
    }
}
