package org.slugpeak.cli.words;

/** What is said of how sound a link is. Immutable; any thread may use it. */
public enum CheckPhrase implements Saying {
    READINGS,
    RATE,
    PER_SECOND,
    JITTER,
    BETWEEN_INTERVALS,
    LONGEST,
    MILLISECONDS,
    NOISE,
    SIGMA,
    RESOLUTION,
    SMALLEST_STEP,
    BITS,
    HUM,
    OR_BETTER,
    OVER_RANGE,
    NO_VALUE,
    NOT_READINGS,
    SKIPPED,
    GAPS,
    LOST_AND_STALE,
    RANGE_CHANGES,
    RESTARTS,
    TURN_NO_FASTER,
    SPEEDS,
    NOT_KNOWN,
    AT_LEAST,
    AT_MOST,
    IT_IS,
    IT_IS_NOT,
    FULL_SCALE,
    KEPT,
    SERIAL_PORTS,
    NO_PORTS,
    SOUND_INPUTS,
    NO_INPUTS,
    BENCHES,
    INSTRUMENTS;

    @Override
    public String kind() {
        return "check";
    }
}
