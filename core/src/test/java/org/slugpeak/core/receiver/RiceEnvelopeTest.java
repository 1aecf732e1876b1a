package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Carrier and IF noise against tables computed and sampled apart from this project (shared/reference/noise). */
class RiceEnvelopeTest {

    private static final double LOAD_OHM = 470e3;

    private static double db(double ratio) {
        return 20 * Math.log10(ratio);
    }

    private static EnvelopeDetector detector(double perveance, double rest) {
        return EnvelopeDetector.of(
                new DiodeDetector(ThermionicDiode.resting(1100, perveance, rest, LOAD_OHM), LOAD_OHM, 0));
    }

    /** noise/rice.csv, carrier 10 dB below to 40 dB above the noise. */
    @Test
    void anIdealDetectorShowsTheMeanOfTheTable() {
        Golden table = Golden.of("noise", "rice.csv");
        assertEquals(26, table.size());
        for (int row = 0; row < table.size(); row++) {
            RiceEnvelope envelope = new RiceEnvelope(1, table.number(row, "noise_rms_V"));
            double mean = table.number(row, "mean_V");
            assertEquals(mean, envelope.meanVolts(), 2e-6 * mean, "row " + row);
            double rest = new RiceEnvelope(0, table.number(row, "noise_rms_V")).meanVolts();
            assertEquals(table.number(row, "net_error_dB"), db(envelope.meanVolts() - rest), 0.002, "row " + row);
            RiceEnvelope.Moments moments = envelope.through(volts -> volts);
            assertEquals(mean, moments.mean(), 2e-4 * mean, "row " + row);
            double deviation = table.number(row, "sd_V");
            assertEquals(deviation, moments.deviation(), 2e-3 * deviation, "row " + row);
        }
    }

    /** noise/valve.csv, the load that follows the envelope: carriers of 0.2 to 5 V. */
    @ParameterizedTest
    @CsvSource({"joined diode-triode 1100 K rest 0.22, 3.2e-5, 0.22", "joined double-diode 1100 K rest 0.5, 1.9e-3, 0.5"
    })
    void aValveDetectorShowsTheMeanOfTheTable(String name, double perveance, double rest) {
        Golden table = Golden.of("noise", "valve.csv").where("diode", name);
        assertEquals(130, table.size());
        EnvelopeDetector detector = detector(perveance, rest);
        for (int row = 0; row < table.size(); row++) {
            double noise = table.number(row, "noise_rms_V");
            RiceEnvelope.Moments with =
                    new RiceEnvelope(table.number(row, "carrier_peak_V"), noise).through(detector::riseVolts);
            RiceEnvelope.Moments without = new RiceEnvelope(0, noise).through(detector::riseVolts);
            double net = table.number(row, "net_fast_V");
            assertEquals(0, db((with.mean() - without.mean()) / net), 0.02, name + " row " + row);
            assertEquals(table.number(row, "noise_rest_fast_V"), rest + without.mean(), 1e-4, name + " row " + row);
            double deviation = table.number(row, "sd_fast_V");
            assertEquals(deviation, with.deviation(), 5e-3 * deviation, name + " row " + row);
        }
    }

    /** noise/rest.csv: the resting reading rises with the noise. */
    @Test
    void noiseAloneRaisesTheRest() {
        Golden table = Golden.of("noise", "rest.csv").where("diode", "joined diode-triode 1100 K rest 0.22");
        assertTrue(table.size() > 10);
        EnvelopeDetector detector = detector(3.2e-5, 0.22);
        for (int row = 0; row < table.size(); row++) {
            double rise = new RiceEnvelope(0, table.number(row, "noise_rms_V"))
                    .through(detector::riseVolts)
                    .mean();
            assertEquals(table.number(row, "rise_fast_V"), rise, 1e-3 * rise + 1e-6, "row " + row);
        }
    }

    /** I0(1), I0(5), I1(1) and I1(5) of Abramowitz and Stegun, table 9.8. */
    @Test
    void theBesselFunctionsHaveTheirTabulatedValues() {
        assertEquals(1.266065878, Math.exp(1) * ModifiedBessel.scaledI0(1), 3e-7);
        assertEquals(27.23987182, Math.exp(5) * ModifiedBessel.scaledI0(5), 6e-6);
        assertEquals(0.565159104, Math.exp(1) * ModifiedBessel.scaledI1(1), 3e-7);
        assertEquals(24.33564214, Math.exp(5) * ModifiedBessel.scaledI1(5), 6e-6);
    }
}
