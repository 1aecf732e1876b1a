package org.slugpeak.core.level;

import java.util.Locale;

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
    IMAGE("tuned to the image", "take the trimmer setting with less capacitance, prove it again"),
    /** The response is crossed too quickly. */
    HARMONIC("a harmonic of the generator", "halve the dial in mind: set the generator to the dial frequency"),
    /** Too wide a response, or two distant maxima. */
    SLUG_END("a slug at the wrong end of its coil", "find the other maximum, with the slugs at the outer ends"),
    /** The reading jumps by itself. */
    MICA("a mica capacitor that jumps", "tap the can, watch for jumps; renew the capacitor before aligning"),
    /** The padder has no effect. */
    PADDER("padder open or shorted", "switch off, measure the padder and its lead"),
    /** A slug has no effect. */
    WINDING("open winding, or a broken slug", "switch off, measure the winding with an ohmmeter"),
    /** The meter takes more current than it should. */
    LOADING("the meter loads the circuit", "use a meter of 10 Mohm or more, or a series resistor at the probe"),
    /** The response is narrower than the circuits can be. */
    REGENERATION("the IF stage feeds back", "check screens, screen bypass and can earths before aligning"),
    /** The reading wobbles without a signal. */
    HUM("mains hum in the reading", "check the filter capacitors and the ground of the meter lead");

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
