package org.slugpeak.core.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the level window of 100 ms lets through of hum, lines falling as 1/k, mains up to 0.3 percent off; computed. */
class ModulationToneTest {

    private static final double RATE_HZ = 12_000;
    private static final int LINES = 20;
    private static final double[] DRIFTS = {-0.003, -0.001, 0, 0.001, 0.003};

    /** All lines together beside the tone, against one of the strength of the eighth that stands on it, dB. */
    private static double humDb(double toneHz, double mainsHz) {
        Taper window = Taper.hann((int) (RATE_HZ / 10));
        double worst = 0;
        for (double drift : DRIFTS) {
            double sum = 0;
            for (int k = 1; k <= LINES; k++) {
                sum += 8.0 / k * through(window, toneHz - k * mainsHz * (1 + drift));
            }
            worst = Math.max(worst, sum);
        }
        return 20 * Math.log10(worst);
    }

    private static double through(Taper window, double offHz) {
        double real = 0;
        double imaginary = 0;
        for (int i = 0; i < window.length(); i++) {
            double angle = 2 * Math.PI * offHz * i / RATE_HZ;
            real += window.weights()[i] * Math.cos(angle);
            imaginary += window.weights()[i] * Math.sin(angle);
        }
        return Math.hypot(real, imaginary) / window.sum();
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 60})
    void isClearOfEveryHarmonicOfTheMains(double mainsHz) {
        double tone = ModulationTone.clearOf(mainsHz);
        for (int k = 1; k <= LINES; k++) {
            assertTrue(Math.abs(tone - k * mainsHz) >= ModulationTone.CLEAR_HZ, "harmonic " + k);
        }
        assertTrue(humDb(tone, mainsHz) < -30, () -> tone + " Hz: " + humDb(tone, mainsHz));
    }

    /** 400 Hz stands on the eighth harmonic of 50 Hz; 430 Hz stands 10 Hz from the seventh of 60 Hz. 400 Hz is sound at 60 Hz. */
    @ParameterizedTest
    @CsvSource({"400, 50, 0", "430, 60, -3.3", "450, 50, -1", "400, 60, -29.8", "450, 60, -38.1"})
    void otherTonesAsComputedOutsideThisProject(double toneHz, double mainsHz, double humDb) {
        assertEquals(humDb, humDb(toneHz, mainsHz), 0.2);
    }

    @Test
    void goesByTheMainsThatIsNearer() {
        assertEquals(430, ModulationTone.clearOf(49.9));
        assertEquals(390, ModulationTone.clearOf(60.1));
    }
}
