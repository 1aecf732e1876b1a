package org.slugpeak.core.figure;

import org.slugpeak.core.decibel.Decibels;

/**
 * What was read of the output at one setting of the generator. Immutable; any thread may use it.
 *
 * @param volts mean above rest, a magnitude, V; infinite where the reading was beyond the meter or clipped
 * @param noiseVolts one standard deviation of the mean, V
 * @param digitVolts one unit of the last digit, V
 */
public record OutputReading(double volts, double noiseVolts, double digitVolts) {

    /** A standard deviation in nepers is {@code 20 / ln 10} decibels. */
    private static final double DB_PER_NEPER = 20 / Math.log(10);

    /** One unit of the last digit, as likely anywhere within it (JCGM 100:2008, F.2.2.1). */
    private static final double DIGIT_SIGMA = 1 / Math.sqrt(12);

    /** Beyond what meter or set can give. */
    public static final OutputReading TOO_MUCH = new OutputReading(Double.POSITIVE_INFINITY, 0, 0);

    /**
     * As a level.
     *
     * @return dB over a volt
     */
    public double levelDb() {
        return Decibels.of(volts);
    }

    /**
     * What the level is uncertain by.
     *
     * @return last digit and noise
     */
    public Uncertainty uncertainty() {
        return new Uncertainty(
                DB_PER_NEPER * digitVolts * DIGIT_SIGMA / volts, DB_PER_NEPER * noiseVolts / volts, 0, 0);
    }

    /**
     * Whether it is a level.
     *
     * @return false where nothing or too much was read
     */
    public boolean isLevel() {
        return volts > 0 && Double.isFinite(volts);
    }
}
