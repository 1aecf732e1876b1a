package org.slugpeak.core.generator;

import java.util.OptionalDouble;
import org.slugpeak.core.decibel.Decibels;

/**
 * Holds a reading in its window by the generator: the decibels of the reading above rest are averaged with a time constant of
 * {@value #TIME_CONSTANT_SECONDS} s, and where the average leaves the window it is brought to its middle. Within a decibel of a peak only a window
 * that was left counts; elsewhere the last decibel before its ends counts as left, so that what is found there stays in it. One thread at a time.
 */
public final class LevelServo {

    /** A hand that only passes by is not followed; one that stays is, before two seconds are over. */
    private static final double TIME_CONSTANT_SECONDS = 1;

    /** What it takes to know the average: three time constants leave a twentieth. */
    private static final double LEAST_SECONDS = 1;

    private static final double MARGIN_DB = 1;

    /** A signal that was not there may come with its whole level; more than this at once could overload the set. */
    private static final double MOST_UP_DB = 12;

    private static final double MOST_DOWN_DB = 20;

    private final double lowVolts;
    private final double highVolts;
    private double averageDb = Double.NaN;
    private double sinceSeconds;
    private long lastNanos;

    /**
     * A servo that has seen nothing.
     *
     * @param lowVolts lower end of the window above rest, V, positive
     * @param highVolts upper end, V, finite
     */
    public LevelServo(double lowVolts, double highVolts) {
        this.lowVolts = lowVolts;
        this.highVolts = highVolts;
    }

    /** The generator was changed: what was read before says nothing any more. */
    public void forget() {
        averageDb = Double.NaN;
        sinceSeconds = 0;
    }

    /**
     * Takes a trusted reading.
     *
     * @param tNanos when it was read, ns
     * @param aboveVolts above rest, as a magnitude, V
     * @param nearPeak whether the hand is within a decibel of a peak
     * @return by which factor the generator's level should change; empty where it stays
     */
    public OptionalDouble see(long tNanos, double aboveVolts, boolean nearPeak) {
        double nowDb = Decibels.of(Math.max(aboveVolts, lowVolts * 1e-3));
        if (Double.isNaN(averageDb)) {
            averageDb = nowDb;
        } else {
            double seconds = (tNanos - lastNanos) / 1e9;
            averageDb += (nowDb - averageDb) * -Math.expm1(-seconds / TIME_CONSTANT_SECONDS);
            sinceSeconds += seconds;
        }
        lastNanos = tNanos;
        boolean left = !isWithin(nearPeak ? 0 : marginDb());
        return left && sinceSeconds >= LEAST_SECONDS ? OptionalDouble.of(toMiddle()) : OptionalDouble.empty();
    }

    private double marginDb() {
        return Math.min(MARGIN_DB, Decibels.of(highVolts / lowVolts) / 4);
    }

    private boolean isWithin(double marginDb) {
        return averageDb >= Decibels.of(lowVolts) + marginDb && averageDb <= Decibels.of(highVolts) - marginDb;
    }

    private double toMiddle() {
        double wantedDb = Decibels.of(lowVolts * highVolts) / 2 - averageDb;
        return Decibels.ratio(Math.max(-MOST_DOWN_DB, Math.min(MOST_UP_DB, wantedDb)));
    }

    /**
     * Whether the average is in the window, and stays there where nothing is turned.
     *
     * @return false before enough was seen
     */
    public boolean isInside() {
        return sinceSeconds >= LEAST_SECONDS && isWithin(marginDb());
    }
}
