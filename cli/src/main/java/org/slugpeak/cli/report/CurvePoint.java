package org.slugpeak.cli.report;

/**
 * One point of a response curve. Immutable; any thread may use it.
 *
 * @param hz generator frequency, Hz
 * @param level as read, in the unit
 */
public record CurvePoint(double hz, double level) {}
