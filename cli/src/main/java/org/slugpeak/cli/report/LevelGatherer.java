package org.slugpeak.cli.report;

import java.util.Map;
import java.util.TreeMap;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.session.ReadingTaken;

/** Gathers {@link Levels} reading by reading, in memory that does not grow with them. One thread at a time. */
final class LevelGatherer {

    private final boolean isDb;
    private final Trace trace = new Trace();
    private final Map<String, Long> untrusted = new TreeMap<>();
    private long count;
    private long lastNanos;
    private long drawn;
    private double lastSmoothed = Double.NaN;
    private double lastValue = Double.NaN;
    private double smallestStep = Double.POSITIVE_INFINITY;

    LevelGatherer(String unit) {
        this.isDb = Decibels.is(unit);
    }

    void take(ReadingTaken it) {
        count++;
        lastNanos = it.tNanos();
        lastSmoothed = it.smoothed();
        Condition condition = it.reading().condition();
        if (!condition.isTrusted()) {
            untrusted.merge(condition.code(), 1L, Long::sum);
        }
        if (condition == Condition.OK) {
            draw(it.reading().value());
        }
    }

    private void draw(double value) {
        drawn++;
        trace.add(lastNanos, isDb ? value : Math.abs(value));
        double step = Math.abs(value - lastValue);
        if (step > 0) {
            smallestStep = Math.min(smallestStep, step);
        }
        lastValue = value;
    }

    /** NaN where there is none. */
    double lastSmoothed() {
        return lastSmoothed;
    }

    long lastNanos(long otherwise) {
        return count == 0 ? otherwise : lastNanos;
    }

    Levels levels() {
        return new Levels(count, lastNanos, drawn, trace.stretches(), smallestStep, new TreeMap<>(untrusted));
    }
}
