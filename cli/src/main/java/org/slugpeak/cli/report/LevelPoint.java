package org.slugpeak.cli.report;

import org.slugpeak.core.reading.Condition;

/**
 * One reading of a session. Immutable; any thread may use it.
 *
 * @param tNanos from the first reading
 * @param value as read, in the unit; without meaning where the condition has no value
 * @param smoothed in the unit; NaN where there is none
 * @param best in the unit; NaN where there is none
 * @param condition how far it can be believed
 * @param adjuster which adjuster was being turned; empty where none was named
 */
public record LevelPoint(
        long tNanos, double value, double smoothed, double best, Condition condition, String adjuster) {}
