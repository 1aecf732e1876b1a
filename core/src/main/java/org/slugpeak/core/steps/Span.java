package org.slugpeak.core.steps;

/**
 * An interval. Immutable.
 *
 * @param low its lower end
 * @param high its upper end
 */
record Span(double low, double high) {

    static Span at(double value) {
        return new Span(value, value);
    }

    Span including(double value) {
        return new Span(Math.min(low, value), Math.max(high, value));
    }

    /** From a point inside to the farther end. */
    double reach(double from) {
        return Math.max(high - from, from - low);
    }
}
