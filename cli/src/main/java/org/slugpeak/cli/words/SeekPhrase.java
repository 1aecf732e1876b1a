package org.slugpeak.cli.words;

/** How what is sought, and the way there, is spoken of. Immutable; any thread may use it. */
public enum SeekPhrase implements Saying {
    LESS_IS_NEARER,
    ZERO_IS_NEARER,
    BELOW_BEST,
    ABOVE_LEAST,
    NO_BEST,
    PAST,
    STEPS_BACK,
    COARSE,
    ON_IT,
    PAST_ZERO,
    STEPS_BACK_ZERO,
    ON_ZERO,
    LARGEST_SWING,
    FROM_ZERO,
    WAITING,
    TURN_SLOWLY,
    OVER_DB,
    SLOW_READINGS;

    @Override
    public String kind() {
        return "seek";
    }
}
