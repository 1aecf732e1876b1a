package org.slugpeak.core.peak;

/**
 * Lays readings out over the time they stand for.
 *
 * <p><b>Definition.</b> Readings that come together make a group: they share a stamp, or lie within {@value #TOGETHER} of the time from group to
 * group. The interval is the time from group to group over the readings in a group, each averaged over the last {@value #MEMORY} groups; so
 * packets, coarse stamps and jitter leave it as it is. A reading is laid one interval after the one before it, the last one of a
 * group at the stamp: only backwards, never into the future, never before the stamp of the group before. Where every reading
 * comes alone it is laid at its stamp.
 *
 * <p><b>Edges.</b> Before the second group the interval is 0: not known. A pause of more than {@value #LONGEST_PAUSE_SECONDS} s and of
 * {@value #LONGEST_PAUSE_GROUPS} groups is an interruption. A stamp before the last one counts as the last; after {@value #STRANGERS} of them in a
 * row the clock was set back, and time goes on from where it was. No stamp overflows.
 *
 * <p><b>Algorithm.</b> Two running means with a memory that grows to its length, and one prediction: that a group will be as large as
 * groups have been. Constant cost, nothing allocated.
 *
 * <p><b>Threads.</b> One at a time.
 *
 * <p><b>References.</b> The ratio of two sums for a rate: any book on renewal processes (from memory).
 */
final class TimeBase {

    private static final double MEMORY = 32;
    /** Jitter of a whole interval either way brings one pair in four so near; that does no harm. */
    private static final double TOGETHER = 0.25;
    /** A single time between groups counts at most this many times the usual one: a drop-out is no new pace. */
    private static final double LONGEST = 4;
    /** So many groups at first count in full, whatever they are. */
    private static final double FIRST = 8;
    /** So many such times are a pattern: then they count in full. */
    private static final double SEVERAL = 1.5;
    /** Groups are packets where they have more readings than this on average; below it, it is jitter. */
    private static final double PACKETS = 1.5;

    private static final double LONGEST_PAUSE_SECONDS = 1;
    private static final double LONGEST_PAUSE_GROUPS = 5;
    /** What comes as slowly as this is no stream; the first pause, with which nothing can be compared, may be so long. */
    private static final double FIRST_PAUSE_SECONDS = 60;

    private static final int STRANGERS = 8;

    private boolean begun;
    private long offsetNanos;
    private long groupNanos;
    private long stampNanos;
    private long laidNanos;
    private int inGroup;
    private int strangers;
    private double groups;
    private double groupSeconds;
    private double groupReadings = 1;
    private double longOnes;
    private double intervalSeconds;

    /**
     * Takes the stamp of the next reading.
     *
     * @return whether the readings were interrupted before it
     */
    boolean accept(long readNanos) {
        long stamp = readNanos + offsetNanos;
        if (!begun) {
            begin(stamp);
            return false;
        }
        long next = forwards(stamp);
        long nanos = Elapsed.nanos(stampNanos, next);
        double seconds = 1e-9 * nanos;
        if (seconds > longestPauseSeconds()) {
            begin(next);
            return true;
        }
        if (nanos == 0 || isInGroup(next)) {
            stampNanos = next;
            inGroup++;
            laidNanos = earlier(stampNanos, laidNanos + nanosOf(intervalSeconds));
        } else {
            nextGroup(next);
        }
        return false;
    }

    private boolean isInGroup(long stamp) {
        return groups > 0 && Elapsed.seconds(groupNanos, stamp) < TOGETHER * groupSeconds;
    }

    private double longestPauseSeconds() {
        return groups > 0 ? Math.max(LONGEST_PAUSE_SECONDS, LONGEST_PAUSE_GROUPS * groupSeconds) : FIRST_PAUSE_SECONDS;
    }

    /** The stamp, or the last one where it lies before that. */
    private long forwards(long stamp) {
        if (stamp >= stampNanos) {
            strangers = 0;
            return stamp;
        }
        strangers++;
        if (strangers < STRANGERS) {
            return stampNanos;
        }
        strangers = 0;
        long setBack = stampNanos - stamp + nanosOf(intervalSeconds);
        offsetNanos += setBack;
        return stamp + setBack;
    }

    private void begin(long stamp) {
        begun = true;
        stampNanos = stamp;
        groupNanos = stamp;
        laidNanos = stamp;
        inGroup = 1;
        strangers = 0;
    }

    /** One more group is complete: its readings stand for the time since the one before it. */
    private void nextGroup(long stamp) {
        learn(Elapsed.seconds(groupNanos, stamp));
        long ahead = groupReadings < PACKETS ? 0 : nanosOf((Math.rint(groupReadings) - 1) * intervalSeconds);
        laidNanos = stampNanos + Math.max(0, Elapsed.nanos(stampNanos, stamp) - ahead);
        stampNanos = stamp;
        groupNanos = stamp;
        inGroup = 1;
    }

    private void learn(double seconds) {
        if (groups < MEMORY) {
            groups++;
        }
        double most = LONGEST * Math.max(inGroup * intervalSeconds, groupSeconds);
        boolean isLong = groups > FIRST && seconds > most;
        longOnes += ((isLong ? 1 : 0) - longOnes) / MEMORY;
        boolean isDropOut = isLong && longOnes < SEVERAL / MEMORY;
        groupSeconds += ((isDropOut ? most : seconds) - groupSeconds) / groups;
        groupReadings += (inGroup - groupReadings) / groups;
        intervalSeconds = groupSeconds / groupReadings;
    }

    private static long nanosOf(double seconds) {
        return Math.round(1e9 * seconds);
    }

    private static long earlier(long a, long b) {
        return Elapsed.nanos(a, b) < 0 ? b : a;
    }

    /** Where the newest reading lies, on an axis that the clock's being set back does not touch. */
    long nanos() {
        return laidNanos;
    }

    /** The same moment on the axis of the stamps as they come now. */
    long asRead(long nanos) {
        return nanos - offsetNanos;
    }

    /** Time from reading to reading; 0 where nothing is known of it. */
    double intervalSeconds() {
        return intervalSeconds;
    }

    /** What comes next need not follow on what came before; the interval stays. */
    void gap() {
        begun = false;
    }
}
