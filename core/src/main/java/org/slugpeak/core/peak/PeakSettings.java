package org.slugpeak.core.peak;

import java.time.Duration;

/**
 * What the user may set about peak finding; a dwell that is not positive is refused with an
 * {@link IllegalArgumentException}. Immutable; any thread may use it.
 *
 * @param seek what is turned for
 * @param dwell how long the reading must stay at the best before it is {@code held}; positive
 */
public record PeakSettings(Seek seek, Duration dwell) {

    public PeakSettings {
        if (dwell.isNegative() || dwell.isZero()) {
            throw new IllegalArgumentException("the dwell must be positive, not " + dwell);
        }
    }

    /**
     * A peak, held for two seconds.
     *
     * @return the usual settings
     */
    public static PeakSettings defaults() {
        return new PeakSettings(Seek.PEAK, Duration.ofSeconds(2));
    }

    /**
     * The same with another goal.
     *
     * @param newSeek what to turn for
     * @return a copy
     */
    public PeakSettings withSeek(Seek newSeek) {
        return new PeakSettings(newSeek, dwell);
    }

    /**
     * The same with another dwell.
     *
     * @param newDwell positive
     * @return a copy
     */
    public PeakSettings withDwell(Duration newDwell) {
        return new PeakSettings(seek, newDwell);
    }
}
