package org.slugpeak.cli.report;

import java.util.List;
import java.util.TreeMap;

/** Gathers {@link LevelCourse}s. One thread at a time. */
final class LevelCourses {

    /** More meter points than any set has; what comes later is not drawn. */
    private static final int MOST = 64;

    /** How long the readings take to follow a hand at the generator, until the turn is told; chosen. */
    private static final long TURNING_NANOS = 3_000_000_000L;

    private final TreeMap<Integer, LevelCourse> gathered = new TreeMap<>();
    private final Trace trace = new Trace();
    private int scale;
    private boolean inUnit;
    private long beginNanos = -1;
    private long endNanos;
    private double found = Double.NaN;

    /** A level on its scale. */
    void add(long tNanos, ScaledLevel level) {
        turnTo(tNanos, level);
        trace.add(tNanos, level.value());
    }

    /** The level before an adjuster; the first one on a scale is how the set was found. */
    void begin(long tNanos, ScaledLevel before) {
        turnTo(tNanos, before);
        if (Double.isNaN(found)) {
            found = before.value();
        }
    }

    /** The level as it was found on the present scale; NaN before the first adjuster. */
    double found() {
        return found;
    }

    /** The generator was turned until now: what was read meanwhile is on neither side of it. */
    void generatorTurned(long tNanos, long askedNanos) {
        trace.forget(Math.max(askedNanos, tNanos - TURNING_NANOS));
    }

    /** An adjuster was left. */
    void end(long tNanos) {
        endNanos = tNanos;
    }

    /** Those in which something was turned; all where nothing was. */
    List<LevelCourse> courses() {
        close();
        List<LevelCourse> turned =
                gathered.values().stream().filter(LevelCourse::wasTurned).toList();
        return turned.isEmpty() ? List.copyOf(gathered.values()) : turned;
    }

    /** Between the last adjuster and another scale only clips were moved. */
    private void turnTo(long tNanos, ScaledLevel level) {
        if (level.scale() != scale) {
            if (!Double.isNaN(found)) {
                trace.forget(endNanos);
            }
            close();
            scale = level.scale();
            inUnit = level.inUnit();
            found = Double.NaN;
            beginNanos = -1;
            trace.clear();
        }
        if (beginNanos < 0) {
            beginNanos = tNanos;
        }
    }

    private void close() {
        if (gathered.size() < MOST
                && (!Double.isNaN(found) || !trace.stretches().isEmpty())) {
            gathered.put(scale, new LevelCourse(scale, inUnit, beginNanos, found, trace.stretches()));
        }
    }
}
