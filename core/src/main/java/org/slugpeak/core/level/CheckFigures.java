package org.slugpeak.core.level;

/**
 * What a check came to. Immutable; any thread may use it.
 *
 * @param figure the one that counts: {@link CheckKind#REST} the resting reading in its unit; {@link CheckKind#LEVEL} decibels of the
 *     reading over those that it would fall by if nothing compressed; {@link CheckKind#LOADING} ohm; {@link CheckKind#EFFECT} dB;
 *     {@link CheckKind#SKIRTS} dB by which the upper one falls more than the lower one; {@link CheckKind#OTHER_IF} kHz from the
 *     generator to the centre; {@link CheckKind#HARMONIC} dB lost off tune, mean of both sides; {@link CheckKind#IMAGE} dB by which
 *     it is weaker
 * @param upDb how far the reading falls above the frequency, dB; NaN where the check does not look there
 * @param downDb the same below it
 * @param skirtHz how far to either side skirts were compared, Hz; NaN for every other check
 */
public record CheckFigures(double figure, double upDb, double downDb, double skirtHz) {

    /** How far to either side of the frequency skirts are compared where nobody says otherwise, Hz; common practice, no source. */
    public static final double USUAL_SKIRT_HZ = 5e3;

    /** A level that follows the generator by less than this ratio of decibels is believed in nothing. */
    public static final double REFUSE_SLOPE = 0.5;

    /**
     * One that follows it by less is held by a limiter: gain control leaves about a third of each decibel (from memory), a limiter whose peak
     * shows a tenth of a decibel for each one leaves a tenth.
     */
    private static final double LIMITED_SLOPE = 0.2;

    /** One that follows it by more than this ratio of decibels is too weak, or meets the square law of the detector. */
    public static final double WEAK_SLOPE = 1.3;

    /** Skirts that differ by less fall alike, dB. */
    public static final double UNEQUAL_SKIRTS_DB = 1.5;

    /**
     * Of a check that looks to both sides, other than at the skirts.
     *
     * @param figure in the unit of the check, as above
     * @param upDb how far the reading falls above the frequency, dB
     * @param downDb the same below it
     */
    public CheckFigures(double figure, double upDb, double downDb) {
        this(figure, upDb, downDb, Double.NaN);
    }

    /**
     * Whether a limiter holds the reading.
     *
     * @param slope decibels of the reading over decibels of the generator, ratio
     * @return true where it follows by next to nothing
     */
    public static boolean isLimited(double slope) {
        return slope < LIMITED_SLOPE;
    }

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
