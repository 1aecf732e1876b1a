package org.slugpeak.core.scale;

import org.slugpeak.core.word.Refused;

/**
 * A dial mark whose true frequency is known; refused with an {@link IllegalArgumentException} unless both frequencies are
 * positive and the uncertainty is not negative. Immutable; any thread may use it.
 *
 * @param dialHz what the dial says, Hz
 * @param trueHz the true frequency, Hz
 * @param sigmaHz standard uncertainty of the true frequency, Hz
 */
public record KnownPoint(double dialHz, double trueHz, double sigmaHz) {

    private static final String NEEDS = "a known point needs positive frequencies";

    public KnownPoint {
        if (!canBe(dialHz, trueHz, sigmaHz)) {
            throw new IllegalArgumentException(NEEDS);
        }
    }

    private static boolean canBe(double dialHz, double trueHz, double sigmaHz) {
        return dialHz > 0 && trueHz > 0 && sigmaHz >= 0 && Double.isFinite(dialHz + trueHz + sigmaHz);
    }

    /**
     * A point from numbers that somebody wrote.
     *
     * @param dialHz what the dial says, Hz
     * @param trueHz the true frequency, Hz
     * @param sigmaHz standard uncertainty of the true frequency, Hz
     * @return the point
     * @throws Refused unless both frequencies are positive and the uncertainty is not negative
     */
    public static KnownPoint of(double dialHz, double trueHz, double sigmaHz) throws Refused {
        if (!canBe(dialHz, trueHz, sigmaHz)) {
            throw new Refused(NEEDS);
        }
        return new KnownPoint(dialHz, trueHz, sigmaHz);
    }

    /**
     * How wrong the dial is.
     *
     * @return dial - true, Hz
     */
    public double dialErrorHz() {
        return dialHz - trueHz;
    }

    /**
     * How wrong the dial is.
     *
     * @return 100 (dial - true) / true, per cent
     */
    public double dialErrorPercent() {
        return 100 * dialErrorHz() / trueHz;
    }
}
