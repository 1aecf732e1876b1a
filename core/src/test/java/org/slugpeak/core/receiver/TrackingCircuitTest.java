package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The expected parts were found twice outside this project: by the closed form of Terman 1943 and by a Newton solution of the
 * raw circuit equations; a circuit simulator puts the resonances at 1055, 1455 and 1855 kHz.
 */
class TrackingCircuitTest {

    @ParameterizedTest(name = "IF {0}, exact at {1}/{2}/{3} kHz: trimmer {4} pF, padder {5} pF, coil {6} uH")
    @CsvSource({
        "455, 600, 1000, 1400, 10.2076, 407.2836, 124.8343",
        "455, 600, 950, 1500, 9.8759, 408.0083, 124.8044",
        "465, 600, 1000, 1400, 10.3746, 398.8928, 123.6202",
        "175, 600, 1000, 1400, 4.6459, 1027.2982, 171.0272",
        "455, 611, 1070, 1529, 8.5299, 386.3116, 128.0318"
    })
    void padderDesignForASignalCoilOf220Microhenry(
            double ifKhz, double low, double middle, double high, double trimmerPf, double padderPf, double coilUh) {
        TrackingPoints points = new TrackingPoints(low * 1e3, middle * 1e3, high * 1e3);
        TrackingCircuit circuit = TrackingCircuit.exactAt(220e-6, ifKhz * 1e3, points);
        assertEquals(trimmerPf, circuit.trimmerFarad() * 1e12, 1e-4 * trimmerPf);
        assertEquals(padderPf, circuit.padderFarad() * 1e12, 1e-4 * padderPf);
        assertEquals(coilUh, circuit.oscillatorCoilHenry() * 1e6, 1e-4 * coilUh);
    }

    @ParameterizedTest(name = "at {0} kHz the oscillator is off by {1} kHz")
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
    void residualErrorOfTheDesign(double dialKhz, double errorKhz) {
        assertEquals(errorKhz * 1e3, usualDesign().errorHz(dialKhz * 1e3, 455e3), 2);
    }

    @Test
    void exactAtThePointsForAnySensibleDesign() {
        SplittableRandom random = new SplittableRandom(1943);
        for (int round = 0; round < 300; round++) {
            double low = random.nextDouble(500e3, 700e3);
            double high = random.nextDouble(2.0, 2.6) * low;
            double middle = random.nextDouble(1.3, 1.8) * low;
            double intermediate = random.nextDouble(170e3, 480e3);
            TrackingCircuit circuit = TrackingCircuit.exactAt(
                    random.nextDouble(150e-6, 300e-6), intermediate, new TrackingPoints(low, middle, high));
            assertEquals(0, circuit.errorHz(low, intermediate), 0.01);
            assertEquals(0, circuit.errorHz(middle, intermediate), 0.01);
            assertEquals(0, circuit.errorHz(high, intermediate), 0.01);
        }
    }

    /** An example worked by hand from the same formulas, 240 uH. */
    @Test
    void padderDesignForASignalCoilOf240Microhenry() {
        TrackingCircuit circuit = TrackingCircuit.exactAt(240e-6, 455e3, new TrackingPoints(600e3, 1000e3, 1400e3));
        assertEquals(136.2e-6, circuit.oscillatorCoilHenry(), 0.05e-6);
        assertEquals(373e-12, circuit.padderFarad(), 0.5e-12);
        assertEquals(9.4e-12, circuit.trimmerFarad(), 0.05e-12);
        assertEquals(
                -12.4e3, circuit.withTrimmer(circuit.trimmerFarad() + 1e-12).errorHz(1400e3, 455e3), 50);
        assertEquals(-11.3e3, circuit.withPadder(circuit.padderFarad() * 1.05).errorHz(600e3, 455e3), 50);
        assertEquals(
                -9.2e3,
                circuit.withOscillatorCoil(circuit.oscillatorCoilHenry() * 1.01).errorHz(1400e3, 455e3),
                60);
    }

    @Test
    void moreOfAnyPartLowersTheOscillatorEverywhere() {
        TrackingCircuit circuit = usualDesign();
        for (double dial : new double[] {600e3, 1000e3, 1400e3}) {
            assertTrue(circuit.withTrimmer(circuit.trimmerFarad() + 1e-12).errorHz(dial, 455e3) < -500);
            assertTrue(circuit.withPadder(circuit.padderFarad() * 1.05).errorHz(dial, 455e3) < -500);
            assertTrue(circuit.withOscillatorCoil(circuit.oscillatorCoilHenry() * 1.01)
                            .errorHz(dial, 455e3)
                    < -500);
        }
    }

    @Test
    void refusesPointsOutOfOrderAndPartsThatAreNone() {
        assertThrows(IllegalArgumentException.class, () -> new TrackingPoints(1000e3, 600e3, 1400e3));
        assertThrows(IllegalArgumentException.class, () -> new TrackingCircuit(220e-6, 0, 400e-12, 10e-12));
    }

    private static TrackingCircuit usualDesign() {
        return TrackingCircuit.exactAt(220e-6, 455e3, new TrackingPoints(600e3, 1000e3, 1400e3));
    }
}
