package org.slugpeak.core.level;

import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Tells drift from turning, and says when the set has settled. It looks at one median a second over a minute. A step of
 * more than 0.1 dB from second to second is somebody's hand: the minute starts anew. The slope is the median of the slopes of
 * all pairs (H. Theil, 1950; P. K. Sen, Journal of the American Statistical Association 63, 1968), which a few odd seconds do
 * not move. Settled: less than 0.2 dB in five minutes; common practice, no source. One thread at a time.
 */
final class DriftWatch {

    private static final int SECONDS = 60;
    private static final double HAND_DB = 0.1;
    private static final double DRIFT_DB_PER_MINUTE = 0.15;
    private static final double SETTLED_DB_PER_MINUTE = 0.04;
    private static final double DB_PER_SHARE = 20 / Math.log(10);

    private final LevelListener listener;
    private final Deque<Double> seconds = new ArrayDeque<>();
    private final RecentReadings second = new RecentReadings(1);
    private long secondNanos = Long.MIN_VALUE / 2;
    private boolean drifted;
    private int untilNext;

    DriftWatch(LevelListener listener) {
        this.listener = listener;
    }

    void gap() {
        seconds.clear();
        second.clear();
    }

    void accept(long tNanos, double magnitude) {
        second.add(tNanos, magnitude);
        if (tNanos - secondNanos < 1_000_000_000L) {
            return;
        }
        secondNanos = tNanos;
        addSecond(second.median());
        if (--untilNext <= 0 && seconds.size() >= SECONDS) {
            judge(tNanos);
        }
    }

    private void addSecond(double median) {
        if (!seconds.isEmpty() && Math.abs(median / seconds.getLast() - 1) * DB_PER_SHARE > HAND_DB) {
            seconds.clear();
        }
        seconds.addLast(median);
        if (seconds.size() > SECONDS) {
            seconds.removeFirst();
        }
    }

    private void judge(long tNanos) {
        double[] values = seconds.stream().mapToDouble(Double::doubleValue).toArray();
        double perMinute = 60 * medianSlope(values);
        double dbPerMinute = DB_PER_SHARE * perMinute / StatUtils.percentile(values, 50);
        if (Math.abs(dbPerMinute) > DRIFT_DB_PER_MINUTE) {
            drifted = true;
            untilNext = SECONDS;
            listener.drift(tNanos, dbPerMinute);
        } else if (drifted && Math.abs(dbPerMinute) < SETTLED_DB_PER_MINUTE) {
            drifted = false;
            listener.settled(tNanos, dbPerMinute);
        }
    }

    /** Median of the slopes of all pairs, per second. */
    static double medianSlope(double[] values) {
        double[] slopes = new double[values.length * (values.length - 1) / 2];
        int count = 0;
        for (int i = 0; i < values.length; i++) {
            for (int j = i + 1; j < values.length; j++) {
                slopes[count++] = (values[j] - values[i]) / (j - i);
            }
        }
        return StatUtils.percentile(slopes, 50);
    }
}
