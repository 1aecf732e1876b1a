package org.slugpeak.bridge.sim;

/**
 * How somebody turns a slug. All figures are invented, of the size that is usual. Immutable; any thread may use it.
 *
 * @param quickestSeconds shortest reaction
 * @param slowestSeconds longest reaction
 * @param seekDegreesPerSecond while the peak is still to come
 * @param returnDegreesPerSecond on the way back
 * @param creepDegreesPerSecond after the word to stop, while the two tones still beat
 * @param slipDegrees the slug sticks and then slips by this much on average
 * @param backlashDegrees play of the tool in the slot
 */
record HandModel(
        double quickestSeconds,
        double slowestSeconds,
        double seekDegreesPerSecond,
        double returnDegreesPerSecond,
        double creepDegreesPerSecond,
        double slipDegrees,
        double backlashDegrees) {

    /** A practised hand. */
    static final HandModel PRACTISED = new HandModel(0.25, 0.45, 75, 30, 10, 1.5, 6);

    /** The same hand, slow enough for a meter with three readings a second: an eighth of a turn a second at most. */
    static final HandModel PATIENT = new HandModel(0.25, 0.45, 30, 12, 4, 1.5, 6);
}
