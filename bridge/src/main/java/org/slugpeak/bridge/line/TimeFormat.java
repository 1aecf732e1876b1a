package org.slugpeak.bridge.line;

/**
 * Where a line says when it was measured. Immutable; any thread may use it.
 *
 * @param field counted from 1
 * @param nanosPerUnit length of the unit
 * @param wrapsAtUnits the count at which the instrument's clock begins again at 0; infinite where it does not
 */
record TimeFormat(int field, double nanosPerUnit, double wrapsAtUnits) {}
