package org.slugpeak.core.scale;

/**
 * A generator, or a harmonic of it, beating against a carrier of known frequency; refused with an
 * {@link IllegalArgumentException} unless the carrier and the harmonic are positive and the beat is not negative. The
 * direction is found by nudging the generator up: where the note rises, the generator is high. Source: {@code |n fg - fs|} is
 * the beat; common practice for the direction. Immutable; any thread may use it.
 *
 * @param carrierHz frequency of the carrier fs, Hz
 * @param harmonic which harmonic n of the generator beats with it, 1 or more
 * @param beatHz pitch of the note, Hz; 0 at zero beat
 * @param direction whether the generator is above or below the carrier
 */
public record BeatNote(double carrierHz, int harmonic, double beatHz, Direction direction) {

    /** On which side of the carrier the generator (or its harmonic) is. */
    public enum Direction {
        /** The note rises when the generator is nudged up. */
        HIGH(+1),
        /** The note falls when the generator is nudged up. */
        LOW(-1);

        private final int sign;

        Direction(int sign) {
            this.sign = sign;
        }
    }

    public BeatNote {
        if (!(carrierHz > 0 && harmonic > 0 && beatHz >= 0)) {
            throw new IllegalArgumentException("a beat needs a carrier, a harmonic from 1 and a pitch from 0");
        }
    }

    /**
     * The generator's frequency: {@code (fs +- beat) / n}.
     *
     * @return Hz
     */
    public double generatorHz() {
        return (carrierHz + direction.sign * beatHz) / harmonic;
    }

    /**
     * The point of the generator's dial that this beat makes known.
     *
     * @param dialHz what the dial says, Hz
     * @param sigmaHz standard uncertainty of carrier and pitch together, Hz; the harmonic divides it
     * @return the point
     */
    public KnownPoint at(double dialHz, double sigmaHz) {
        return new KnownPoint(dialHz, generatorHz(), sigmaHz / harmonic);
    }
}
