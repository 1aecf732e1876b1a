package org.slugpeak.core.peak;

/**
 * Keeps single wild readings out without holding up a real change: a reading far from the last good one is set aside until
 * the next ones tell. Where they agree with it, all of them go on; where they return, it was a spike. Ordinary readings are
 * never delayed.
 *
 * <p>Where none of many in a row agrees with another, the usual jump is another one: it is learnt anew ({@link Spread}), and they are ordinary.
 */
final class Despiker {

    /** What to do after a reading was offered. */
    enum Outcome {
        /** The offered reading is good. */
        GOOD,
        /** It is set aside for now. */
        WAIT,
        /** It and those set aside before it are real: {@link #held()} of them, oldest first. */
        STEP
    }

    /** A reading is far when it jumps by more than this many times the usual jump between neighbours. */
    private static final double FAR = 4.5;
    /** Readings set aside agree when their jumps from the last good reading stand in such a ratio. */
    private static final double AGREE_FROM = 0.75;

    private static final double AGREE_TO = 6;
    /** This long a row of neighbours is no interference any more. */
    private static final double CONFIRM_SECONDS = 0.06;
    /** Most readings to set aside. */
    private static final int MOST = 4;
    /** Readings whose jumps are remembered. */
    private static final double MEMORY = 32;

    private final double[] values = new double[MOST];
    private final long[] times = new long[MOST];
    private final Spread jumps = new Spread(MEMORY);
    private int held;
    private boolean begun;
    private double last;

    Outcome offer(long tNanos, double value, double intervalSeconds) {
        if (!begun) {
            begun = true;
            last = value;
            return Outcome.GOOD;
        }
        double jump = value - last;
        double limit = FAR * jumps.sigma();
        jumps.add(jump, 0);
        if (jumps.seen() < 4 || Math.abs(jump) <= limit) {
            held = 0;
            last = value;
            return Outcome.GOOD;
        }
        return setAside(tNanos, value, limit, intervalSeconds);
    }

    private Outcome setAside(long tNanos, double value, double limit, double intervalSeconds) {
        if (held > 0 && !agrees(value, limit)) {
            held = 0;
        }
        values[held] = value;
        times[held] = tNanos;
        held++;
        if (held <= toConfirm(intervalSeconds)) {
            return Outcome.WAIT;
        }
        last = value;
        return Outcome.STEP;
    }

    /** Near the first one set aside, or further on the same way: a hand that has begun to turn. */
    private boolean agrees(double value, double limit) {
        double first = values[0] - last;
        double now = value - last;
        double ratio = now / first;
        return Math.abs(now - first) <= limit || (ratio >= AGREE_FROM && ratio <= AGREE_TO);
    }

    private static int toConfirm(double intervalSeconds) {
        double readings = CONFIRM_SECONDS / intervalSeconds;
        return readings >= MOST - 1 ? MOST - 1 : (int) Math.max(1, Math.ceil(readings - 0.01));
    }

    /** Readings that a step consists of; they stay readable until the next reading is offered. */
    int held() {
        return held;
    }

    double value(int index) {
        return values[index];
    }

    long tNanos(int index) {
        return times[index];
    }

    /** The readings of a step have been taken. */
    void release() {
        held = 0;
    }

    /** What comes next need not follow on what came before. */
    void gap() {
        begun = false;
        held = 0;
    }
}
