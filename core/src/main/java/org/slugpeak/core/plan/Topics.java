package org.slugpeak.core.plan;

/** Topics of the {@code advice} records that a guided alignment leaves, by which report and resumption know them. */
public final class Topics {

    /** Name of the plan. */
    public static final String PLAN = "plan";
    /** A safety question and its answer. */
    public static final String SAFETY = "safety";
    /** How generator, dial and meter must stand for the next step. */
    public static final String SET_UP = "set-up";
    /** What to turn, and for what. */
    public static final String TURN = "turn";
    /** Take the hand away. */
    public static final String HANDS_OFF = "hands-off";
    /** What the hand's going away changed; the amount is in dB. */
    public static final String HAND_EFFECT = "hand-effect";
    /** Best of one sweep of the gang; the amount is in dB against the best sweep. */
    public static final String SWEEP = "sweep";
    /** A round is over; the amount is what it gained, dB. */
    public static final String ROUND = "round";
    /** Something in the readings that a person must judge. */
    public static final String GUARD = "guard";
    /** The user went back one step. */
    public static final String BACK = "back";
    /** A resistor has to go on or come off. */
    public static final String DAMPING = "damping";
    /** The plan is through. */
    public static final String PLAN_OVER = "plan-over";

    private Topics() {}
}
