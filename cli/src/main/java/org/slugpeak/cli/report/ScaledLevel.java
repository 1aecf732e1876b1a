package org.slugpeak.cli.report;

/**
 * A level on a scale of {@link ConstantGenerator}. Immutable; any thread may use it.
 *
 * @param scale which one
 * @param inUnit whether it is in the unit of the readings rather than in dB
 * @param value in dB or in the unit; NaN where not known
 */
record ScaledLevel(int scale, boolean inUnit, double value) {}
