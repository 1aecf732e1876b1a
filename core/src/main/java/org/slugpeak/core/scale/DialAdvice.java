package org.slugpeak.core.scale;

/**
 * What to do about a receiver's dial. Immutable; any thread may use it.
 *
 * @param adjuster which adjuster, or what else is wrong
 * @param more true for more capacitance or more inductance; without meaning where nothing is to be turned
 * @param effectHz how far off the dial is at that end because of it, Hz, not negative
 */
public record DialAdvice(Adjuster adjuster, boolean more, double effectHz) {

    /** What can be wrong with a dial. */
    public enum Adjuster {
        /** The oscillator's trimmer, at the high end: capacitance. */
        TRIMMER,
        /** The padder, at the low end: capacitance. */
        PADDER,
        /** The oscillator's slug, at the low end: inductance. */
        SLUG,
        /** The pointer may have slipped: the error is the same percentage everywhere. */
        POINTER,
        /** The middle stays off when both ends are right: no adjuster does that. */
        MIDDLE
    }
}
