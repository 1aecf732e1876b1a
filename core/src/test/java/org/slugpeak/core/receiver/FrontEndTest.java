package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Oscillator tracking and image rejection of the invented set. */
class FrontEndTest {

    private static final double IF_HZ = Tarnfield.IF_HZ;
    private final FrontEnd front = Tarnfield.design().front();

    /**
     * Error of the three-point design for 600, 1000, 1400 kHz (formulas of Terman, Radio Engineers' Handbook, 1943; the
     * resonances at 800 and 1600 kHz also by ngspice).
     */
    @ParameterizedTest
    @CsvSource({
        "540, 4.577",
        "560, 2.804",
        "600, 0",
        "700, -3.566",
        "800, -3.784",
        "900, -2.204",
        "1000, 0",
        "1100, 1.934",
        "1200, 2.910",
        "1300, 2.402",
        "1400, 0",
        "1500, -4.607",
        "1600, -11.657"
    })
    void theOscillatorTracksWithThePublishedError(double kilohertz, double errorKilohertz) {
        double oscillator = front.oscillatorHz(kilohertz * 1e3, 0, 0, 0, IF_HZ);
        assertEquals(errorKilohertz, oscillator / 1e3 - kilohertz - 455, 0.002);
    }

    /** One circuit, Q 80: 41 dB at 1 MHz and 17 dB at 15 MHz, by 10 log(1 + (Q y)^2). */
    @ParameterizedTest
    @CsvSource({"1e6, 41", "15e6, 19.5"})
    void oneAerialCircuitRejectsTheImageByTheFormula(double dialHz, double expectedDb) {
        double wanted = front.aerialResponse(dialHz, dialHz, 0);
        double image = front.aerialResponse(dialHz + 2 * IF_HZ, dialHz, 0);
        assertEquals(expectedDb, 20 * Math.log10(wanted / image), 0.5);
    }

    @Test
    void moreTrimmerCapacitanceLowersTheOscillatorMostAtTheHighEnd() {
        double high = front.oscillatorHz(1400e3, 0.1, 0, 0, IF_HZ) - front.oscillatorHz(1400e3, 0, 0, 0, IF_HZ);
        double low = front.oscillatorHz(600e3, 0.1, 0, 0, IF_HZ) - front.oscillatorHz(600e3, 0, 0, 0, IF_HZ);
        assertTrue(high < 5 * low && low < 0, high + " " + low);
    }

    @Test
    void twoSettingsOfTheShortWaveTrimmerBringTheSignalInAndTheImageNeedsMoreCapacitance() {
        double right = front.oscillatorHz(16e6, 0, 0, 0, IF_HZ);
        assertEquals(16e6 + IF_HZ, right, 1e-6);
        double farad = front.shortWaveFarad() * (Math.pow((16e6 + IF_HZ) / (16e6 - IF_HZ), 2) - 1);
        double turns = farad / front.trimmerFaradPerTurn();
        assertTrue(turns > 0);
        assertEquals(16e6 - IF_HZ, front.oscillatorHz(16e6, 0, 0, turns, IF_HZ), 1);
    }
}
