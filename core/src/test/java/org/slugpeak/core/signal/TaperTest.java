package org.slugpeak.core.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Window figures and detection identities. F. J. Harris, On the Use of Windows for Harmonic Analysis with the Discrete
 * Fourier Transform, Proc. IEEE 66 (1978) 51, Table I: coherent gain, equivalent noise bandwidth, scalloping loss.
 */
class TaperTest {

    private static final int LENGTH = 4096;

    private static double scallopingDb(Taper taper) {
        Correlator correlator = new Correlator(taper);
        double omega = 2 * Math.PI * 400 / LENGTH;
        double[] sine = new double[LENGTH];
        for (int i = 0; i < LENGTH; i++) {
            sine[i] = Math.cos(omega * (i - (LENGTH - 1) / 2.0));
        }
        correlator.run(sine, 0, omega + Math.PI / LENGTH);
        return -20 * Math.log10(correlator.amplitude());
    }

    @Test
    void hannIsAsPublished() {
        Taper hann = Taper.hann(LENGTH);
        assertEquals(0.5, hann.sum() / LENGTH, 1e-5);
        assertEquals(1.5, hann.noiseBandwidthBins(), 1e-5);
        assertEquals(1.4236, scallopingDb(hann), 5e-4);
    }

    @Test
    void blackmanHarrisIsAsPublished() {
        Taper window = Taper.blackmanHarris(LENGTH);
        assertEquals(0.35875, window.sum() / LENGTH, 1e-5);
        assertEquals(2.004353, window.noiseBandwidthBins(), 1e-5);
        assertEquals(0.8256, scallopingDb(window), 5e-4);
    }

    @Test
    void halfASineIsAsPublished() {
        // Harris, cos window of power 1: coherent gain 0.64, noise bandwidth 1.23, scalloping loss 2.10 dB.
        Taper window = Taper.sine(LENGTH);
        assertEquals(0.64, window.sum() / LENGTH, 0.005);
        assertEquals(1.23, window.noiseBandwidthBins(), 0.005);
        assertEquals(2.10, scallopingDb(window), 0.005);
    }

    @Test
    void blackmanHarrisHidesAStrongLineFourBinsAway() {
        Correlator correlator = new Correlator(Taper.blackmanHarris(LENGTH));
        double[] sine = new double[LENGTH];
        for (int i = 0; i < LENGTH; i++) {
            sine[i] = Math.sin(2 * Math.PI * 400.0 / LENGTH * i);
        }
        for (double bins = 4; bins < 60; bins += 0.25) {
            correlator.run(sine, 0, 2 * Math.PI * (400 + bins) / LENGTH);
            assertEquals(0, correlator.amplitude(), Math.pow(10, -91.5 / 20));
        }
    }

    @Test
    void amplitudeAndPhaseAreThoseOfTheGoertzelBin() {
        // Identity: 3 cos(2 pi 5 n / 64 + 0.7) over 64 samples has the bin 73.42484997931 + 61.84489797482 j at n = 0.
        int n = 64;
        double omega = 2 * Math.PI * 5 / n;
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = 3 * Math.cos(omega * i + 0.7);
        }
        // A Hann window over whole periods gives the same amplitude and phase as the plain sum.
        Correlator correlator = new Correlator(Taper.hann(n));
        correlator.run(x, 0, omega);
        double toStart = omega * (n - 1) / 2;
        double re = correlator.cosine() * Math.cos(toStart) + correlator.sine() * Math.sin(toStart);
        double im = correlator.sine() * Math.cos(toStart) - correlator.cosine() * Math.sin(toStart);
        assertEquals(73.42484997931, re * n / 2, 1e-9);
        assertEquals(61.84489797482, im * n / 2, 1e-9);
    }

    @Test
    void oddAndEvenWindowsDetectAlike() {
        for (int n = 100; n < 110; n++) {
            Correlator correlator = new Correlator(Taper.hann(n));
            double[] x = new double[n + 7];
            for (int i = 0; i < x.length; i++) {
                x[i] = 0.3 * Math.cos(0.9 * i + 0.4);
            }
            double omega = correlator.follow(x, 7, 0.91, 4);
            assertEquals(0.9, omega, 1e-5);
            assertEquals(0.3, correlator.amplitude(), 1e-5);
            double phase = Math.atan2(correlator.sine(), correlator.cosine());
            double expected = 0.9 * (7 + (n - 1) / 2.0) + 0.4;
            assertEquals(0, Math.sin((phase - expected) / 2), 1e-4);
        }
    }

    @Test
    void theDecimatorIsFlatInItsPassBandAndDeafToWhatWouldFoldIntoIt() {
        for (int factor : new int[] {2, 3, 4, 8, 17}) {
            for (double f = 0.02; f < 1; f += 0.02) {
                if (f > 0.38 && f < 0.62) {
                    continue;
                }
                Decimator decimator = new Decimator(factor, 0.38);
                double peak = 0;
                for (int i = 0; i < 60_000; i++) {
                    boolean due = decimator.take(Math.cos(2 * Math.PI * f / factor * i));
                    peak = due && i > 30_000 ? Math.max(peak, Math.abs(decimator.output())) : peak;
                }
                if (f > 0.5) {
                    assertEquals(0, peak, Math.pow(10, -74 / 20.0), "factor " + factor + " at " + f);
                }
                assertEquals(gain(factor, f), f > 0.5 ? 0 : 1, 0.0003);
            }
        }
    }

    private static double gain(int factor, double f) {
        Decimator decimator = new Decimator(factor, 0.38);
        double re = 0;
        double im = 0;
        int count = 0;
        double[] w = Taper.hann(4000).weights();
        for (int i = 0; count < w.length; i++) {
            if (decimator.take(Math.cos(2 * Math.PI * f / factor * i)) && i > 1000) {
                re += 2 * w[count] * decimator.output() * Math.cos(2 * Math.PI * f / factor * i);
                im += 2 * w[count] * decimator.output() * Math.sin(2 * Math.PI * f / factor * i);
                count++;
            }
        }
        return Math.hypot(re, im) / 2000;
    }
}
