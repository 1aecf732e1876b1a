package org.slugpeak.cli.moment;

import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.ReadingTaken;

/**
 * Where the reading stands. Immutable; any thread may use it.
 *
 * @param value smoothed, or while something is asked for as it was read, in the unit; NaN before the first trusted reading
 * @param best in the unit; NaN until there is one
 * @param distanceDb on the wrong side of the best, dB, 0 to {@value #FARTHEST_DB}; NaN where there is no best, and for a zero
 * @param swing the largest magnitude since the adjuster was begun, in the unit; scales the bar of a zero
 * @param trend which way the magnitude goes
 * @param condition of the last reading
 */
public record Level(double value, double best, double distanceDb, double swing, Trend trend, Condition condition) {

    /** Farther away than this is all the same to a person. */
    public static final double FARTHEST_DB = 60;

    /** Of the best; farther below it than the farthest. */
    private static final double SMALLEST = 1e-9;

    static final Level NONE = new Level(Double.NaN, Double.NaN, Double.NaN, 0, Trend.STEADY, Condition.NO_VALUE);

    static Level of(ReadingTaken taken, Seek seek, double swingBefore) {
        double magnitude = Math.abs(taken.smoothed());
        return new Level(
                taken.smoothed(),
                taken.best(),
                within(seek.distanceDb(Math.max(taken.ofBest(), SMALLEST))),
                Double.isNaN(magnitude) ? swingBefore : Math.max(swingBefore, magnitude),
                taken.trend(),
                taken.reading().condition());
    }

    private static double within(double distanceDb) {
        return Math.min(FARTHEST_DB, Math.max(0, distanceDb));
    }

    /** As it was read: the finder rests while something is asked for, and follows nothing. */
    Level unsmoothed(Reading reading) {
        double read = reading.condition().isTrusted() ? reading.value() : Double.NaN;
        return new Level(read, best, distanceDb, swing, trend, condition);
    }

    Level withSwing(double newSwing) {
        return new Level(value, best, distanceDb, newSwing, trend, condition);
    }

    /**
     * Whether there is a best to be compared with.
     *
     * @return false until there is one, and for a zero
     */
    public boolean hasBest() {
        return !Double.isNaN(best);
    }

    double percentOfBest() {
        return 100 * value / best;
    }

    /**
     * Whether the reading goes the right way.
     *
     * @param seek what is turned for
     * @return false at rest, too
     */
    public boolean isNearing(Seek seek) {
        return trend == seek.nearer();
    }
}
