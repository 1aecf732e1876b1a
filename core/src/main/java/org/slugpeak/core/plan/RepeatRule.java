package org.slugpeak.core.plan;

/**
 * When a stage is done; refused with an {@link IllegalArgumentException} unless both figures are positive. Immutable; any
 * thread may use it.
 *
 * @param belowDb done when a whole round changes the reading by less than this, dB; what one adjuster lost counts as much as
 *     what another gained
 * @param mostRounds after so many rounds the user is asked to look for a fault instead; 1 for a stage that is gone through
 *     once
 */
public record RepeatRule(double belowDb, int mostRounds) {

    /** Until a whole round changes less than 0.2 dB (common practice, no source), six rounds at most. */
    public static final RepeatRule USUAL = new RepeatRule(0.2, 6);

    public RepeatRule {
        if (!(belowDb > 0) || mostRounds < 1) {
            throw new IllegalArgumentException("a repeat rule needs a gain above zero and one round or more");
        }
    }

    /**
     * Whether the stage is gone through only once.
     *
     * @return true for one round
     */
    public boolean isOnce() {
        return mostRounds == 1;
    }
}
