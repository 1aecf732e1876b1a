package org.slugpeak.core.level;

import org.slugpeak.core.word.Coded;

/**
 * What a sign in the readings may mean. Never a certainty: each names the next thing to try. The signs are common practice, no
 * source. Immutable; any thread may use it.
 */
public enum Suspicion {
    /** The reading does not follow the generator. */
    TOO_STRONG,
    /** The response is centred elsewhere. */
    WRONG_IF,
    /** No image where it should be. */
    IMAGE,
    /** The response is crossed too quickly. */
    HARMONIC,
    /** Too wide a response, or two distant maxima. */
    SLUG_END,
    /** The reading jumps by itself. */
    MICA,
    /** The padder has no effect. */
    PADDER,
    /** A slug has no effect. */
    WINDING,
    /** The meter takes more current than it should. */
    LOADING,
    /** The response is narrower than the circuits can be. */
    REGENERATION,
    /** The reading wobbles without a signal. */
    HUM,
    /** The reading hardly changes with the generator, or not at all. */
    LIMITER;

    /**
     * The word for it.
     *
     * @return lower case, hyphenated
     */
    public String code() {
        return Coded.of(this);
    }
}
