package org.slugpeak.core.level;

/**
 * What a check came to. Immutable; any thread may use it.
 *
 * @param figure the one that counts: {@link CheckKind#REST} the resting reading in its unit; {@link CheckKind#LEVEL} decibels of the
 *     reading over decibels of the generator; {@link CheckKind#LOADING} ohm; {@link CheckKind#EFFECT} dB;
 *     {@link CheckKind#SKIRTS} dB by which the upper one falls more than the lower one; {@link CheckKind#OTHER_IF} kHz from the
 *     generator to the centre; {@link CheckKind#HARMONIC} dB lost off tune, mean of both sides; {@link CheckKind#IMAGE} dB by which
 *     it is weaker
 * @param upDb how far the reading falls above the frequency, dB; NaN where the check does not look there
 * @param downDb the same below it
 */
public record CheckFigures(double figure, double upDb, double downDb) {

    /** A level that follows the generator by less than this ratio of decibels is believed in nothing. */
    public static final double REFUSE_SLOPE = 0.5;

    /** One that follows it by more than this ratio of decibels is too weak, or meets the square law of the detector. */
    public static final double WEAK_SLOPE = 1.3;

    /** Skirts that differ by less fall alike, dB. */
    public static final double UNEQUAL_SKIRTS_DB = 1.5;

    /**
     * Of a check with one figure.
     *
     * @param figure in the unit of the check, as above
     * @return the figures
     */
    public static CheckFigures of(double figure) {
        return new CheckFigures(figure, Double.NaN, Double.NaN);
    }
}
