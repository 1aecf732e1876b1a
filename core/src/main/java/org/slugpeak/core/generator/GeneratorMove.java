package org.slugpeak.core.generator;

/**
 * What a move of a check does to the generator, against how it stood before the check. Immutable; any thread may use it.
 *
 * @param levelFactor of its level; 0 switches it off
 * @param offsetHz of its frequency, Hz
 */
public record GeneratorMove(double levelFactor, double offsetHz) {

    /**
     * Another level.
     *
     * @param factor of the level; 0 switches it off
     * @return the move
     */
    public static GeneratorMove level(double factor) {
        return new GeneratorMove(factor, 0);
    }

    /**
     * Another frequency.
     *
     * @param hz so many hertz higher
     * @return the move
     */
    public static GeneratorMove aside(double hz) {
        return new GeneratorMove(1, hz);
    }
}
