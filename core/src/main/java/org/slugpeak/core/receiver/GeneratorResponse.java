package org.slugpeak.core.receiver;

/**
 * A way by which a generator is heard. Immutable; any thread may use it.
 *
 * @param generatorHarmonic 1 for the generator itself
 * @param path the way into the set
 * @param distanceHz how far above the middle of that way the harmonic falls, Hz
 */
public record GeneratorResponse(int generatorHarmonic, Path path, double distanceHz) {

    /** Ways into a superheterodyne. */
    public enum Path {
        /** The frequency that the set is tuned to. */
        SIGNAL,
        /** The image. */
        IMAGE,
        /** Straight into the intermediate-frequency amplifier. */
        INTERMEDIATE
    }

    /**
     * Whether this is the response that a user wants.
     *
     * @return true for the generator itself at the tuned frequency
     */
    public boolean isWanted() {
        return generatorHarmonic == 1 && path == Path.SIGNAL;
    }
}
