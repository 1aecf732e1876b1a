package org.slugpeak.bridge.instrument;

import java.util.OptionalDouble;

/**
 * What a sound instrument of its kind reaches, as its description states it; each is empty where it states none. Immutable;
 * any thread may use it.
 *
 * @param leastEffectiveBits effective bits that it has at least
 * @param mostNoise short-term noise that it has at most, as a standard deviation in the unit of its readings
 * @param leastPerSecond readings a second that it sends at least
 * @param mostJitterSeconds spread of the intervals that it has at most, as a standard deviation
 * @param leastHumRejectionDb by how much it takes mains hum down at least
 */
public record LinkBounds(
        OptionalDouble leastEffectiveBits,
        OptionalDouble mostNoise,
        OptionalDouble leastPerSecond,
        OptionalDouble mostJitterSeconds,
        OptionalDouble leastHumRejectionDb) {

    /** Nothing is stated. */
    public static final LinkBounds NONE = new LinkBounds(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
}
