package org.slugpeak.cli.words;

/**
 * What every sentence says that brings a hand to a terminal: off before, on after. Windings, slugs and their screws may stand at
 * high tension, and a reservoir capacitor keeps it after switching off, so no such sentence is made in any other way. The order
 * is common practice, no source; the 30 V are below what IEC 61010-1 clause 6.3 takes as hazardous (from memory: 30 V rms, 60 V
 * DC). Local codes and licensed practice come first. All methods are pure; any thread may use them.
 */
public final class SafeHands {

    private SafeHands() {}

    /** Before the first adjuster: what a hand may do while the set is on. */
    public static String turning() {
        return Phrase.TURNING.of();
    }

    /** The state in which a hand may go to a terminal, for the middle of a sentence. */
    public static String safe() {
        return Phrase.SAFE.of();
    }

    /** A job at a terminal, given as a command, after which the set goes on again. */
    static String at(String job) {
        return Phrase.AT_TERMINALS.of(job);
    }

    /** A job at a terminal, given as a command, with which the set stays off. */
    static String leaveOff(String job) {
        return Phrase.LEFT_OFF.of(job);
    }
}
