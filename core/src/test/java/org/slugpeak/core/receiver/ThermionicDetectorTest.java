package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The valve detector against averages and transients computed apart from this project (shared/reference/detector and physics). */
class ThermionicDetectorTest {

    private static final double LOAD_OHM = 470e3;

    private static DiodeDetector of(Golden table, int row) {
        double kelvin = table.number(row, "kelvin");
        double perveance = table.number(row, "perveance_A_V1p5");
        double rest = table.number(row, "rest_V");
        return new DiodeDetector(
                ThermionicDiode.resting(kelvin, perveance, rest, LOAD_OHM), LOAD_OHM, table.number(row, "source_ohm"));
    }

    private static double db(double ratio) {
        return 20 * Math.log10(ratio);
    }

    /** detector/levels.csv, carriers of 10 mV to 20 V, rests of 0.1 to 0.8 V, 1000 to 1150 K, sources of 0 and 127 kohm. */
    @ParameterizedTest
    @ValueSource(strings = {"joined diode-triode", "joined double-diode"})
    void aCarrierLeavesWhatTheTableSays(String law) {
        Golden table = Golden.of("detector", "levels.csv").where("law", law);
        assertTrue(table.size() > 300, "rows " + table.size());
        for (int row = 0; row < table.size(); row++) {
            DiodeDetector detector = of(table, row);
            double peak = table.number(row, "diode_peak_V");
            String where = law + " row " + row;
            assertEquals(table.number(row, "rest_V"), detector.restVolts(), 1e-9, where);
            double net = detector.dcVolts(peak) - detector.restVolts();
            assertEquals(0, db(net / table.number(row, "net_V")), 0.01, where);
            double carrier = table.number(row, "carrier_peak_V");
            assertEquals(0, db(detector.carrierPeakVolts(peak) / carrier), 0.01, where);
            assertEquals(0, db(detector.inputOhm(peak) / table.number(row, "input_ohm")), 0.01, where);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "joined diode-triode, 1000, 0.1, 0",
        "joined diode-triode, 1100, 0.22, 0",
        "joined diode-triode, 1100, 0.22, 127000",
        "joined double-diode, 1150, 0.8, 127000"
    })
    void theFunctionForSimulationsIsTheSameWithinAHundredthOfADecibel(
            String law, String kelvin, String rest, String source) {
        Golden table = Golden.of("detector", "levels.csv")
                .where("law", law)
                .where("kelvin", kelvin)
                .where("rest_V", rest)
                .where("source_ohm", source);
        assertTrue(table.size() > 10, "rows " + table.size());
        EnvelopeDetector detector = EnvelopeDetector.of(of(table, 0));
        for (int row = 0; row < table.size(); row++) {
            double carrier = table.number(row, "carrier_peak_V");
            double net = table.number(row, "net_V");
            assertEquals(0, db(detector.riseVolts(carrier) / net), 0.01, "carrier " + carrier);
            assertEquals(carrier, detector.carrierPeakVolts(net), 2e-3 * carrier);
        }
    }

    /** physics/detector.csv, another person's table, where kT/q is rounded to 0.0948, 0.0862 and 0.0991 V. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "\"valve, 1100 K, rest 0.22 V\"; 1100.11; 3e-5; 0.22",
                "\"valve, 1000 K, rest 0.50 V\"; 1000.31; 3e-5; 0.50",
                "\"valve, 1150 K, rest 0.80 V\"; 1150.01; 1e-4; 0.80"
            })
    void asWellWithTheSecondTable(String name, double kelvin, double perveance, double rest) {
        Golden table = Golden.of("physics", "detector.csv").where("diode", name);
        assertEquals(40, table.size());
        ThermionicDiode diode = ThermionicDiode.resting(kelvin, perveance, rest, LOAD_OHM);
        for (int row = 0; row < table.size(); row++) {
            EnvelopeDetector detector =
                    EnvelopeDetector.of(new DiodeDetector(diode, LOAD_OHM, table.number(row, "source_ohm")));
            double net = detector.riseVolts(table.number(row, "carrier_peak_V"));
            assertEquals(table.number(row, "net_dB_re_1V"), db(net), 0.05, name + " row " + row);
        }
    }

    /** physics/README.md, no. 1: halving 0.5, 1 and 2 V takes off 8.66, 7.54 and 6.99 dB. */
    @ParameterizedTest
    @CsvSource({"0.5, 8.66", "1, 7.54", "2, 6.99"})
    void halvingTakesOffMoreThanSixDecibels(double carrier, double expectedDb) {
        EnvelopeDetector detector = EnvelopeDetector.of(
                new DiodeDetector(ThermionicDiode.resting(1100.11, 3e-5, 0.22, LOAD_OHM), LOAD_OHM, 0));
        assertEquals(expectedDb, db(detector.riseVolts(carrier) / detector.riseVolts(carrier / 2)), 0.01);
    }

    @Test
    void withoutACarrierThereIsNoRiseAndBeyondTheTableTheLawGoesOn() {
        EnvelopeDetector detector = EnvelopeDetector.of(
                new DiodeDetector(ThermionicDiode.resting(1100, 3.2e-5, 0.22, LOAD_OHM), LOAD_OHM, 0));
        assertEquals(0, detector.riseVolts(0));
        assertEquals(0.22, detector.restVolts(), 1e-9);
        assertEquals(4, detector.riseVolts(2e-4) / detector.riseVolts(1e-4), 1e-9);
        assertEquals(2, detector.riseVolts(400) / detector.riseVolts(200), 1e-9);
        assertEquals(1, detector.riseVolts(100.001) / detector.riseVolts(99.999), 1e-4);
    }

    /** The audio of a straight part is the modulation itself; in the toe, where the law is square, twice as much. */
    @Test
    void audioFollowsTheSlopeOfTheLaw() {
        EnvelopeDetector detector = EnvelopeDetector.of(
                new DiodeDetector(ThermionicDiode.resting(1100, 3.2e-5, 0.22, LOAD_OHM), LOAD_OHM, 0));
        assertEquals(0.6, detector.audioPeakVolts(0.01, 0.3) / detector.riseVolts(0.01), 0.002);
        double slope = (detector.riseVolts(10.1) - detector.riseVolts(9.9)) / 0.2;
        assertEquals(3 * slope, detector.audioPeakVolts(10, 0.3), 0.01);
    }
}
