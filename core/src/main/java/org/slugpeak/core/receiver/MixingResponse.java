package org.slugpeak.core.receiver;

/**
 * A signal frequency that mixes to the intermediate frequency. Immutable; any thread may use it.
 *
 * @param oscillatorHarmonic m, 0 where the oscillator takes no part
 * @param signalHarmonic n, 1 or more
 * @param signalHz the signal's frequency, Hz
 */
public record MixingResponse(int oscillatorHarmonic, int signalHarmonic, double signalHz) {

    /**
     * The order of the product: the lower, the stronger as a rule.
     *
     * @return m + n
     */
    public int order() {
        return oscillatorHarmonic + signalHarmonic;
    }
}
