package org.slugpeak.bridge.line;

import org.slugpeak.core.reading.Condition;

/**
 * Where a line says how far its number can be believed. Immutable; any thread may use it.
 *
 * @param field counted from 1
 * @param overRange letters that mean that the input is beyond the range
 * @param noValue letters that mean that the number is no reading of the input
 * @param skipped letters that mean that readings before this one could not be sent
 */
record FlagFormat(int field, String overRange, String noValue, String skipped) {

    boolean tellsOfSkipped(String flags) {
        return containsAny(flags, skipped);
    }

    Condition condition(String flags) {
        if (containsAny(flags, overRange)) {
            return Condition.OVER_RANGE;
        }
        return containsAny(flags, noValue) ? Condition.NO_VALUE : Condition.OK;
    }

    private static boolean containsAny(String flags, String letters) {
        return flags.chars().anyMatch(each -> letters.indexOf(each) >= 0);
    }
}
