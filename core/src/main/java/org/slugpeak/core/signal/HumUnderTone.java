package org.slugpeak.core.signal;

import java.util.Arrays;

/**
 * What hum a tone hides when it stands on a harmonic of the mains, as 400 Hz does on the eighth of 50 Hz. No measurement
 * can part the two while both are there; what is known is the line as it was before the tone came, or else its neighbours.
 */
final class HumUnderTone {

    private static final int MOST = 64;

    private final HumModel hum;
    private final double[] alone = new double[MOST];

    HumUnderTone(HumModel hum) {
        this.hum = hum;
        Arrays.fill(alone, Double.NaN);
    }

    /** Remembers every line that no tone is near to. */
    void see(double toneHz) {
        for (int k = 1; k <= hum.lines() && k < MOST; k++) {
            if (Math.abs(k * hum.mainsHz() - toneHz) > hum.guardHz()) {
                alone[k] = hum.stands(k) ? hum.level(k) : 0;
            }
        }
    }

    /** Number of the harmonic that a tone hides; 0 for none. */
    int harmonic(double toneHz) {
        if (hum.mainsHz() == 0) {
            return 0;
        }
        int k = (int) Math.round(toneHz / hum.mainsHz());
        return Math.abs(k * hum.mainsHz() - toneHz) <= hum.guardHz() && k < MOST ? k : 0;
    }

    /** Level that may lie under it. */
    double level(int harmonic) {
        if (harmonic == 0) {
            return 0;
        }
        if (!Double.isNaN(alone[harmonic])) {
            return alone[harmonic];
        }
        double neighbours = 0;
        for (int k = Math.max(1, harmonic - 2); k <= Math.min(hum.lines(), harmonic + 2); k++) {
            if (k != harmonic && hum.stands(k)) {
                neighbours = Math.max(neighbours, hum.level(k));
            }
        }
        return neighbours;
    }
}
