package org.slugpeak.cli.report;

/**
 * Dial error at one frequency, before or after the work. Immutable; any thread may use it.
 *
 * @param hz true frequency, Hz
 * @param errorHz dial - true, Hz
 * @param after whether it was taken after the work
 */
public record DialError(double hz, double errorHz, boolean after) {}
