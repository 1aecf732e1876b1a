package org.slugpeak.core.figure;

import org.slugpeak.core.word.Coded;

/**
 * A figure of a receiver, and how well it is known. Immutable; any thread may use it.
 *
 * @param kind which figure
 * @param dialHz where the dial stood, Hz
 * @param value in the unit that its kind counts in; NaN where it was not measured
 * @param sigma one standard deviation: dB, but Hz for a width and a ratio for a ratio; NaN where it was not measured
 * @param limit what most of that comes from
 * @param outcome what the value is
 */
public record Figure(FigureKind kind, double dialHz, double value, double sigma, Limit limit, Outcome outcome) {

    /** What came of a measurement. */
    public enum Outcome implements Coded {
        /** The value is the figure. */
        MEASURED,
        /** The figure is no less: generator or steps went no further. */
        AT_LEAST,
        /** The figure is no more. */
        AT_MOST,
        /** It was left out, or could not be measured. */
        NOT_MEASURED;

        @Override
        public String code() {
            return Coded.of(this);
        }
    }

    /**
     * One that was not measured.
     *
     * @param kind which figure
     * @param dialHz where the dial stood, Hz
     * @return without a value
     */
    public static Figure missing(FigureKind kind, double dialHz) {
        return new Figure(kind, dialHz, Double.NaN, Double.NaN, Limit.NOISE, Outcome.NOT_MEASURED);
    }

    /**
     * Whether it has a value.
     *
     * @return false where it was not measured
     */
    public boolean hasValue() {
        return outcome != Outcome.NOT_MEASURED;
    }
}
