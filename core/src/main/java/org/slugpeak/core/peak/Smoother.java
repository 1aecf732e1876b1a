package org.slugpeak.core.peak;

/**
 * Picks the longest mean that still agrees with all shorter ones: long while nothing moves, short while the reading moves
 * quickly. Source: Lepski, On a problem of adaptive estimation in Gaussian white noise, Theory Probab. Appl. 35 (1990) 454.
 *
 * <p>Slow noise (hum beats, flicker) can be smoothed away or followed. A verdict wants it away. What is shown and heard has to
 * follow: slow noise cannot be told from an uneven hand within the tenth of a second that an ear allows. So there are two
 * values, and the shown one is the mean of the shorter window.
 */
final class Smoother {

    /** A longer mean disagrees when it differs by more than this many sigma of the difference. */
    private static final double AGREE = 3;

    private static final double LONGEST_SECONDS = 3;
    private static final int ALWAYS = 2;

    private double value = Double.NaN;
    private double shown = Double.NaN;
    private double sigma = Double.NaN;

    void look(Pyramid pyramid, Noise noise, double blockSeconds) {
        int octave = 0;
        double mean = pyramid.mean(0);
        boolean follows = true;
        shown = mean;
        while (octave + 1 < Pyramid.OCTAVES && pyramid.has(octave + 1, 1) && allowed(octave + 1, blockSeconds)) {
            double longer = pyramid.mean(octave + 1);
            double apart = Math.abs(longer - mean);
            // A mean differs from its own newer half by 1/sqrt(2) of the sigma of that half.
            double byWhiteNoise = AGREE * Math.sqrt(0.5) * noise.white(octave, mean) + 0.5 * noise.step();
            if (apart > byWhiteNoise + AGREE * noise.excess(octave)) {
                break;
            }
            follows &= apart <= byWhiteNoise;
            mean = longer;
            octave++;
            if (follows) {
                shown = mean;
            }
        }
        value = mean;
        sigma = noise.sigma(octave, mean);
    }

    private static boolean allowed(int octave, double blockSeconds) {
        return octave < ALWAYS || blockSeconds * Pyramid.length(octave) <= LONGEST_SECONDS;
    }

    /** For verdicts. */
    double value() {
        return value;
    }

    /** For eyes and ears. */
    double shown() {
        return shown;
    }

    double sigma() {
        return sigma;
    }

    void clear() {
        value = Double.NaN;
        shown = Double.NaN;
        sigma = Double.NaN;
    }
}
