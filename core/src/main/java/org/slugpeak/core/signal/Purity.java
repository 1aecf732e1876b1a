package org.slugpeak.core.signal;

import org.slugpeak.core.decibel.Decibels;

/**
 * SINAD and harmonic distortion of the tone over the last 200 ms.
 *
 * <p>SINAD is the radio one, (S + N + D) / (N + D): the power of everything over the power of what is left when the tone is
 * taken out, DC excepted, from there to half the sample rate. (The converter engineers' SINAD, S / (N + D), is 0.3 dB less
 * at 12 dB.) Distortion is the root of the summed squares of harmonics 2 to 6, as far as the pass band reaches, over the
 * fundamental; a harmonic that does not stand out from the noise counts as none.
 */
final class Purity {

    static final double WINDOW_SECONDS = 0.2;

    private static final int HIGHEST_HARMONIC = 6;
    private static final double SIGNIFICANT = 10;

    private final double fullRateHz;
    private final double audioRateHz;
    private final double passHz;
    private final Correlator full;
    private final Correlator audio;
    private double sinadDb;
    private double distortion;
    private double level;

    Purity(double fullRateHz, double audioRateHz, double passHz) {
        this.fullRateHz = fullRateHz;
        this.audioRateHz = audioRateHz;
        this.passHz = passHz;
        this.full = new Correlator(Taper.hann((int) (WINDOW_SECONDS * fullRateHz)));
        this.audio = new Correlator(Taper.hann((int) (WINDOW_SECONDS * audioRateHz)));
        forget();
    }

    void forget() {
        sinadDb = Double.NaN;
        distortion = Double.NaN;
        level = Double.NaN;
    }

    /** Measures a tone whose frequency is known to a bin. */
    void update(History fullHistory, History audioHistory, double toneHz) {
        if (!fullHistory.holds(full.length()) || !audioHistory.holds(audio.length())) {
            return;
        }
        double hz = measureSinad(fullHistory, toneHz);
        measureDistortion(audioHistory, hz);
    }

    /** Decibels; NaN where there is no tone. */
    double sinadDb() {
        return sinadDb;
    }

    /** A ratio; NaN where there is no tone. */
    double distortion() {
        return distortion;
    }

    /** Level of the tone in the same window; NaN where there is none. */
    double level() {
        return level;
    }

    private double measureSinad(History history, double toneHz) {
        double[] x = history.data();
        int from = history.from(full.length());
        double omega = full.follow(x, from, 2 * Math.PI * toneHz / fullRateHz, 1);
        double mean = mean(x, from);
        level = full.amplitude();
        double rest = restPower(x, from, mean, omega);
        double all = totalPower(x, from, mean);
        sinadDb = Decibels.ofPower(all / Math.max(rest, Double.MIN_NORMAL));
        return omega * fullRateHz / (2 * Math.PI);
    }

    private double mean(double[] x, int from) {
        double[] w = full.taper().weights();
        double sum = 0;
        for (int i = 0; i < w.length; i++) {
            sum += w[i] * x[from + i];
        }
        return sum / full.taper().sum();
    }

    private double totalPower(double[] x, int from, double mean) {
        double[] w = full.taper().weights();
        double sum = 0;
        for (int i = 0; i < w.length; i++) {
            double v = x[from + i] - mean;
            sum += w[i] * v * v;
        }
        return sum / full.taper().sum();
    }

    private double restPower(double[] x, int from, double mean, double omega) {
        double[] w = full.taper().weights();
        double phase = Math.atan2(full.sine(), full.cosine()) - omega * (w.length - 1) / 2.0;
        double twice = 2 * Math.cos(omega);
        double before = level * Math.cos(phase - omega);
        double now = level * Math.cos(phase);
        double sum = 0;
        for (int i = 0; i < w.length; i++) {
            double v = x[from + i] - mean - now;
            sum += w[i] * v * v;
            double next = twice * now - before;
            before = now;
            now = next;
        }
        return sum / full.taper().sum();
    }

    private void measureDistortion(History history, double toneHz) {
        double[] x = history.data();
        int from = history.from(audio.length());
        double fundamental = powerAt(x, from, toneHz);
        double noise = noisePower(x, from, toneHz);
        double sum = 0;
        for (int k = 2; k <= HIGHEST_HARMONIC && k * toneHz < passHz; k++) {
            double power = powerAt(x, from, k * toneHz);
            if (power > SIGNIFICANT * noise) {
                sum += power - noise;
            }
        }
        distortion = fundamental > 0 ? Math.sqrt(sum / fundamental) : Double.NaN;
    }

    /** Mean noise power between the harmonics; of two places the quieter one, since hum may stand at the other. */
    private double noisePower(double[] x, int from, double toneHz) {
        double sum = 0;
        for (int k = 2; k <= 3; k++) {
            sum += Math.min(powerAt(x, from, (k + 0.5) * toneHz), powerAt(x, from, (k + 0.44) * toneHz));
        }
        // The lesser of two exponentially distributed powers is on average half of their mean.
        return sum;
    }

    private double powerAt(double[] x, int from, double hz) {
        audio.run(x, from, 2 * Math.PI * hz / audioRateHz);
        return audio.power();
    }
}
