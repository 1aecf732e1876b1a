package org.slugpeak.cli.report;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What a report tells of the readings of a session. Immutable; any thread may use it.
 *
 * @param count how many there were
 * @param lastNanos when the last one came, from the first; 0 where there is none
 * @param drawn how many can be drawn: those that were measured within the range
 * @param trace the course of those, as magnitudes where the unit is none of decibels
 * @param smallestStep between two that follow each other, in the unit; infinite where there was none
 * @param untrusted how many there were of each condition that cannot be believed
 */
public record Levels(
        long count,
        long lastNanos,
        long drawn,
        List<Trace.Stretch> trace,
        double smallestStep,
        Map<String, Long> untrusted) {

    public Levels {
        trace = List.copyOf(trace);
    }

    OptionalDouble highest() {
        return trace.stream().mapToDouble(Trace.Stretch::most).max();
    }

    OptionalDouble lowest() {
        return trace.stream().mapToDouble(Trace.Stretch::least).min();
    }
}
