package org.slugpeak.core.figure;

import java.util.stream.DoubleStream;

/**
 * What a level is uncertain by, part by part, each one standard deviation; parts add as squares (JCGM 100:2008, 5.1.2, for what does not
 * hang together). Immutable; any thread may use it.
 *
 * @param digitDb from the meter's last digit, dB
 * @param noiseDb from the noise of the reading, dB
 * @param interpolationDb from the line between settings, dB
 * @param attenuatorDb from the generator's attenuator, dB
 */
public record Uncertainty(double digitDb, double noiseDb, double interpolationDb, double attenuatorDb) {

    /** Of what is exact. */
    public static final Uncertainty NONE = new Uncertainty(0, 0, 0, 0);

    /**
     * Of all parts together.
     *
     * @return one standard deviation, dB
     */
    public double sigmaDb() {
        return Math.sqrt(DoubleStream.of(digitDb, noiseDb, interpolationDb, attenuatorDb)
                .map(each -> each * each)
                .sum());
    }

    /**
     * The greatest part.
     *
     * @return the first of those that are equal
     */
    public Limit limit() {
        double most = DoubleStream.of(digitDb, noiseDb, interpolationDb, attenuatorDb)
                .max()
                .orElseThrow();
        if (digitDb == most) {
            return Limit.LAST_DIGIT;
        }
        if (noiseDb == most) {
            return Limit.NOISE;
        }
        return interpolationDb == most ? Limit.INTERPOLATION : Limit.ATTENUATOR;
    }

    /**
     * Of a sum or a difference of two levels.
     *
     * @param other of the other level
     * @return parts added as squares
     */
    public Uncertainty with(Uncertainty other) {
        return new Uncertainty(
                Math.hypot(digitDb, other.digitDb),
                Math.hypot(noiseDb, other.noiseDb),
                Math.hypot(interpolationDb, other.interpolationDb),
                Math.hypot(attenuatorDb, other.attenuatorDb));
    }

    /**
     * Of a level that many times as great.
     *
     * @param factor of the parts; its sign does not count
     * @return each part that many times as great
     */
    public Uncertainty times(double factor) {
        double size = Math.abs(factor);
        return new Uncertainty(size * digitDb, size * noiseDb, size * interpolationDb, size * attenuatorDb);
    }

    /**
     * With an interpolation.
     *
     * @param sigmaDb what that is uncertain by, dB
     * @return a copy
     */
    public Uncertainty interpolated(double sigmaDb) {
        return new Uncertainty(digitDb, noiseDb, Math.hypot(interpolationDb, sigmaDb), attenuatorDb);
    }

    /**
     * Set by an attenuator that may be off.
     *
     * @param mostDb how far at the most, dB; every error up to that is as likely, so its standard deviation is this over the root of 3
     *     (JCGM 100:2008, 4.3.7)
     * @return a copy
     */
    public Uncertainty setWithin(double mostDb) {
        return new Uncertainty(digitDb, noiseDb, interpolationDb, Math.hypot(attenuatorDb, mostDb / Math.sqrt(3)));
    }
}
