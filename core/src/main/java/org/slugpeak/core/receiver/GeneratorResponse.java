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
        SIGNAL("the tuned frequency"),
        /** The image. */
        IMAGE("the image"),
        /** Straight into the intermediate-frequency amplifier. */
        INTERMEDIATE("the intermediate frequency");

        private final String words;

        Path(String words) {
            this.words = words;
        }

        /**
         * In words.
         *
         * @return lower case, with its article
         */
        public String words() {
            return words;
        }
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
