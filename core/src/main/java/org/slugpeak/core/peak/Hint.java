package org.slugpeak.core.peak;

/** What the finder tells the user beside its verdicts. Immutable; any thread may use it. */
public enum Hint {
    /** The readings go negative; they are hunted by magnitude. The amount is the first such reading, in its unit. */
    NEGATIVE_GOING("negative-going"),
    /** The reading falls from the very start, or goes on falling after a pass: turn the other way. The amount is the fall in dB. */
    WRONG_WAY("wrong-way"),
    /** The old best was out of reach for so long that it has been lowered. The amount is by how many dB. */
    BEST_AGED("best-aged"),
    /** The hand stopped near the best, but not near enough to be held. The amount is what is missing, in dB. */
    STOPPED_SHORT("stopped-short"),
    /** Next to nothing is read any more, or nothing ever was. The amount is what is left, part of the level before. */
    SIGNAL_GONE("signal-gone"),
    /** The signal that was gone is there again. The amount is how far it is from the level before, in dB. */
    SIGNAL_BACK("signal-back"),
    /**
     * Readings come too slowly for the present speed of turning, or the hand has run past the best and comes back too fast to stop there. The
     * amount is the factor by which to slow down.
     */
    TURN_SLOWER("turn-slower");

    private final String code;

    Hint(String code) {
        this.code = code;
    }

    /**
     * The word used in records.
     *
     * @return lower case, hyphenated
     */
    public String code() {
        return code;
    }
}
