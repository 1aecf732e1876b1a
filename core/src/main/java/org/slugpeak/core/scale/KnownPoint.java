package org.slugpeak.core.scale;

/**
 * A dial mark whose true frequency is known; refused with an {@link IllegalArgumentException} unless both frequencies are
 * positive and the uncertainty is not negative. Immutable; any thread may use it.
 *
 * @param dialHz what the dial says, Hz
 * @param trueHz the true frequency, Hz
 * @param sigmaHz standard uncertainty of the true frequency, Hz
 */
public record KnownPoint(double dialHz, double trueHz, double sigmaHz) {

    public KnownPoint {
        if (!(dialHz > 0 && trueHz > 0 && sigmaHz >= 0) || !Double.isFinite(dialHz + trueHz + sigmaHz)) {
            throw new IllegalArgumentException("a known point needs positive frequencies");
        }
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
