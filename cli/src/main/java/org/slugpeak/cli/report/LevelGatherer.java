package org.slugpeak.cli.report;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.session.ReadingTaken;

/** Gathers {@link Levels} reading by reading, in memory that does not grow with them. One thread at a time. */
final class LevelGatherer {

    /** Nobody takes back more settled values than this. */
    private static final int MOST_OPEN = 4096;

    private final int mostOpen;

    /** Readings that may yet be taken back. */
    private final Deque<Scaled> open = new ArrayDeque<>();

    private final LevelCourses courses = new LevelCourses();
    private final Map<String, Long> untrusted = new TreeMap<>();
    private long count;
    private long lastNanos;
    private long drawn;
    private double lastSmoothed = Double.NaN;
    private double lastValue = Double.NaN;
    private double smallestStep = Double.POSITIVE_INFINITY;

    /** A reading, and what it is as if nobody had touched the generator. */
    private record Scaled(ReadingTaken reading, ScaledLevel level, boolean ofTheSet) {}

    /** Only settled values, one for each step of a turn, can be taken back. */
    LevelGatherer(boolean stepped) {
        this.mostOpen = stepped ? MOST_OPEN : 0;
    }

    /** A reading with what it is on the scale of its moment; drawn unless it says nothing of the set. */
    void take(ReadingTaken it, ScaledLevel level, boolean ofTheSet) {
        open.addLast(new Scaled(it, level, ofTheSet));
        if (open.size() > mostOpen) {
            count(open.removeFirst());
        }
    }

    LevelCourses courses() {
        return courses;
    }

    /** The last one was a mistake. */
    void takeBack() {
        open.pollLast();
    }

    private void count(Scaled scaled) {
        ReadingTaken it = scaled.reading();
        count++;
        lastNanos = it.tNanos();
        lastSmoothed = it.smoothed();
        Condition condition = it.reading().condition();
        if (!condition.isTrusted()) {
            untrusted.merge(condition.code(), 1L, Long::sum);
        }
        if (condition == Condition.OK) {
            step(it.reading().value());
            draw(scaled);
        }
    }

    private void draw(Scaled scaled) {
        if (scaled.ofTheSet()) {
            drawn++;
            courses.add(lastNanos, scaled.level());
        }
    }

    private void step(double value) {
        double step = Math.abs(value - lastValue);
        if (step > 0) {
            smallestStep = Math.min(smallestStep, step);
        }
        lastValue = value;
    }

    /** NaN where there is none. */
    double lastSmoothed() {
        return last().map(ReadingTaken::smoothed).orElse(lastSmoothed);
    }

    long lastNanos(long otherwise) {
        return last().map(ReadingTaken::tNanos).orElse(count == 0 ? otherwise : lastNanos);
    }

    private Optional<ReadingTaken> last() {
        return Optional.ofNullable(open.peekLast()).map(Scaled::reading);
    }

    /** To be called when no more come. */
    Levels levels() {
        open.forEach(this::count);
        open.clear();
        return new Levels(count, lastNanos, drawn, courses.courses(), smallestStep, new TreeMap<>(untrusted));
    }
}
