package org.slugpeak.core.session;

import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Reading;

/**
 * Closes each step: what was read, and what is made of it. Immutable; any thread may use it.
 *
 * @param reading as it came; its time counts from the first reading
 * @param smoothed in the unit; NaN before the first trusted reading
 * @param best in the unit; NaN until there is one
 * @param bestSigma one sigma of the best, in the unit; NaN if not known
 * @param ofBest ratio of smoothed to best; NaN until there is one, and for a zero
 * @param trend which way the magnitude goes
 */
public record ReadingTaken(Reading reading, double smoothed, double best, double bestSigma, double ofBest, Trend trend)
        implements Frame {

    @Override
    public Manner manner() {
        return Manner.NOTES;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.readingTaken(this);
    }

    /**
     * The same where nothing is turned, so that no best is sought and no way is the right one.
     *
     * @return without best and trend
     */
    public ReadingTaken uncompared() {
        return new ReadingTaken(reading, smoothed, Double.NaN, Double.NaN, Double.NaN, Trend.STEADY);
    }

    @Override
    public long tNanos() {
        return reading.tNanos();
    }
}
