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

    /** A slug of the demonstration set passes half the power in so many turns: what the usual speeds are made for. */
    private static final double USUAL_WIDTH_TURNS = 1.8;

    /**
     * While it seeks a hand dares more than the width of a circuit tells: half the power passes in 1.4 s at the least, several times
     * its reaction. At twice that a maximum is left as quickly as a generator is turned down. Made up.
     */
    private static final double SEEKING = 6;

    /** On the way back likewise. */
    private static final double RETURNING = 4;

    /** Creeping it is helped by the vernier of its fingertips. */
    private static final double CREEPING = 3;

    private static final double SLOWEST = 0.005;

    /**
     * The same hand at something that is touchier than a slug: it turns less fast, with a tool that fits and so with shorter slips;
     * its reactions stay what they are.
     */
    HandModel at(double widthTurns) {
        double touch = Math.max(SLOWEST, widthTurns / USUAL_WIDTH_TURNS);
        double fine = Math.min(1, touch * CREEPING);
        return new HandModel(
                quickestSeconds,
                slowestSeconds,
                seekDegreesPerSecond * Math.min(1, touch * SEEKING),
                returnDegreesPerSecond * Math.min(1, touch * RETURNING),
                creepDegreesPerSecond * fine,
                slipDegrees * fine,
                backlashDegrees * fine);
    }

    /** The same hand, told to turn slower. */
    HandModel slowedBy(double factor) {
        return new HandModel(
                quickestSeconds,
                slowestSeconds,
                seekDegreesPerSecond / factor,
                returnDegreesPerSecond / factor,
                creepDegreesPerSecond,
                slipDegrees,
                backlashDegrees);
    }

    /** The same hand, slow enough for a meter with three readings a second: an eighth of a turn a second at most. */
    static final HandModel PATIENT = new HandModel(0.25, 0.45, 30, 12, 4, 1.5, 6);
}
