package org.slugpeak.cli.report;

/**
 * One point of a response curve. Immutable; any thread may use it.
 *
 * @param hz generator frequency, Hz
 * @param level in the unit; as a straight detector would show it where the session has the law of its own
 */
public record CurvePoint(double hz, double level) {}
