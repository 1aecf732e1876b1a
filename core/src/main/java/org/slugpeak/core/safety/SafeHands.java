package org.slugpeak.core.safety;

/**
 * What every sentence says that brings a hand to a terminal: off before, on after. Windings, slugs and their screws may stand at
 * high tension, and a reservoir capacitor keeps it after switching off, so no such sentence is made in any other way. The order
 * is common practice, no source; the 30 V are below what IEC 61010-1 clause 6.3 takes as hazardous (from memory: 30 V rms, 60 V
 * DC). Local codes and licensed practice come first. All methods are pure; any thread may use them.
 */
public final class SafeHands {

    /** Before the first adjuster: what a hand may do while the set is on. */
    public static final String TURNING =
            "adjusters are turned with the set ON: insulated tool, one hand, the other off the chassis; touch nothing else"
                    + " until a prompt has said OFF";

    /** The state in which a hand may go to a terminal, for the middle of a sentence. */
    public static final String SAFE = "the set OFF, unplugged, discharged, measured under 30 V";

    private static final String BEFORE = "set OFF, unplug, discharge, measure under 30 V; ";
    private static final String AFTER = "; hands away; set ON";

    private SafeHands() {}

    /**
     * A job at a terminal, after which the set goes on again.
     *
     * @param job what is clipped on or taken off, as a command
     * @return one line
     */
    public static String at(String job) {
        return leaveOff(job) + AFTER;
    }

    /**
     * A job at a terminal, with which the set stays off.
     *
     * @param job what is done, as a command
     * @return one line
     */
    public static String leaveOff(String job) {
        return BEFORE + job;
    }
}
