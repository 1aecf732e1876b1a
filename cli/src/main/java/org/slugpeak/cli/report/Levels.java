package org.slugpeak.cli.report;

import java.util.List;
import java.util.Map;

/**
 * What a report tells of the readings of a session. Immutable; any thread may use it.
 *
 * @param count how many there were
 * @param lastNanos when the last one came, from the first; 0 where there is none
 * @param drawn how many can be drawn: those that were measured within the range
 * @param courses of those, one for each scale
 * @param smallestStep between two that follow each other, in the unit; infinite where there was none
 * @param untrusted how many there were of each condition that cannot be believed
 */
public record Levels(
        long count,
        long lastNanos,
        long drawn,
        List<LevelCourse> courses,
        double smallestStep,
        Map<String, Long> untrusted) {

    public Levels {
        courses = List.copyOf(courses);
    }
}
