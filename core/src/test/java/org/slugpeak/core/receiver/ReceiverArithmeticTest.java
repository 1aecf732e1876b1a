package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReceiverArithmeticTest {

    /** Universal resonance curve, Terman 1943, section 3: a = Q df/f; working rules 70 %, 45 % and 24 %. */
    @Nested
    class Images {

        @ParameterizedTest(name = "one circuit of Q {2}: {1} MHz at an IF of {0} kHz has its image {3} dB down")
        @CsvSource({
            "455, 1.0, 80, 41",
            "455, 6.0, 60, 25",
            "455, 15.0, 60, 17",
            "455, 18.0, 60, 16",
            "10700, 98.0, 60, 28"
        })
        void fallWithFrequency(double ifKhz, double signalMhz, double q, double expectedDb) {
            Superhet receiver = Superhet.oscillatorAbove(ifKhz * 1e3);
            assertEquals(expectedDb, ImageRatio.imageRatioDb(receiver, signalMhz * 1e6, q), 0.5);
        }

        @ParameterizedTest(name = "single-tuned, Q 100 at 455 kHz: response {1} at {0} kHz")
        @CsvSource({"445, 0.21949", "450, 0.41225", "455, 1", "460, 0.41602", "465, 0.22412", "452.730687, 0.70711"})
        void lossFollowsTheResonanceCurve(double kHz, double expected) {
            double ratio = Math.pow(10, -ImageRatio.lossDb(100, 455e3, kHz * 1e3) / 20);
            assertEquals(expected, ratio, 5e-6);
        }

        @Test
        void ofTwoEqualCircuitsIsTwiceThatOfOne() {
            Superhet receiver = Superhet.oscillatorAbove(455e3);
            double one = ImageRatio.imageRatioDb(receiver, 1e6, 80);
            assertEquals(2 * one, ImageRatio.imageRatioDb(receiver, 1e6, 80, 80), 1e-9);
        }

        @Test
        void areNotThereBelowZero() {
            Superhet receiver = new Superhet(455e3, OscillatorSide.BELOW);
            assertEquals(Double.POSITIVE_INFINITY, ImageRatio.imageRatioDb(receiver, 600e3, 80));
        }
    }

    /** Computed from Biot and Savart; Terman and Pettit 1952 for the far form. */
    @Nested
    class Fields {

        @ParameterizedTest(name = "{0} turns, {1} cm across, at {2} cm: {3} uV/m for each mV through 459 ohm")
        @CsvSource({"3, 25, 60, 84", "5, 15, 30, 391", "5, 15, 50, 89", "5, 15, 60, 52", "6, 15, 30, 469"})
        void ofAFewTurns(double turns, double diameterCm, double distanceCm, double expectedMicrovolts) {
            double current = LoopField.currentAmperes(1e-3, 459, 0, 1e6);
            LoopField field = new LoopField(turns, diameterCm / 200, distanceCm / 100);
            assertEquals(expectedMicrovolts, field.coaxialVoltsPerMetre(current) * 1e6, 0.8);
        }

        @Test
        void farAwayFollowTheShortFormula() {
            LoopField field = new LoopField(4, 0.1, 20);
            assertEquals(47.15 * 4 * 0.2 * 0.2 / 8000, field.coaxialVoltsPerMetre(1), 3e-3 * 47.15 * 4 * 0.04 / 8000);
        }

        @Test
        void bareCoilSagsFrom17To50PerCentOverTheBand() {
            double low = LoopField.currentAmperes(1, 50, 8.7e-6, 550e3) * 50;
            double high = LoopField.currentAmperes(1, 50, 8.7e-6, 1600e3) * 50;
            assertEquals(0.83, low, 0.03);
            assertEquals(0.50, high, 0.01);
        }

        @Test
        void areTrustedOnlyFarFromTheCoilAndNearAgainstTheWavelength() {
            LoopField field = new LoopField(5, 0.075, 0.6);
            assertTrue(field.isFarEnough(0.25));
            assertFalse(field.isFarEnough(0.31));
            assertTrue(field.isNearField(1.6e6));
            assertFalse(new LoopField(5, 0.075, 31).isNearField(1.6e6));
        }

        @Test
        void needACoil() {
            assertThrows(IllegalArgumentException.class, () -> new LoopField(0, 0.1, 1));
        }
    }

    /** Ohm's law; a 10 megohm meter on a 0.5 megohm detector load reads 4.76 % low. */
    @Nested
    class Loading {

        @ParameterizedTest(name = "{1} megohm on {0} megohm reads {2} % low, {3} dB")
        @CsvSource({
            "0.5, 10, -4.76, -0.42",
            "1, 10, -9.09, -0.83",
            "2.2, 10, -18.03, -1.73",
            "0.5, 11, -4.35, -0.39",
            "0.5, 1, -33.33, -3.52",
            "1.5, 0.05, -96.77, -29.83",
            "0.1, 10, -0.99, -0.09"
        })
        void takesAwayFromTheReading(double sourceMegohm, double meterMegohm, double percent, double dB) {
            double fraction = MeterLoading.shownFraction(sourceMegohm * 1e6, meterMegohm * 1e6);
            assertEquals(percent, 100 * (fraction - 1), 0.006);
            assertEquals(dB, MeterLoading.errorDb(sourceMegohm * 1e6, meterMegohm * 1e6), 0.006);
        }

        @Test
        void correctionGivesTheVoltageBack() {
            assertEquals(1.0, MeterLoading.unloadedVolts(10.0 / 10.5, 0.5e6, 10e6), 1e-12);
        }

        @Test
        void movingCoilMeterOf20000OhmsPerVoltHas5MegohmOn250Volts() {
            assertEquals(5e6, MeterLoading.movingCoilOhms(20e3, 250));
        }
    }

    /** P = V^2 / R; 50 mW is the usual standard output (IRE 1938, from memory). */
    @Nested
    class Output {

        @ParameterizedTest(name = "{0} W in {1} ohm is {2} V")
        @CsvSource({
            "0.05, 3.2, 0.4",
            "0.05, 4, 0.44721",
            "0.05, 8, 0.63246",
            "0.05, 15, 0.86603",
            "0.5, 3.2, 1.26491",
            "1, 3.2, 1.78885",
            "0.05, 5000, 15.81139"
        })
        void powerAndVoltage(double watts, double ohms, double volts) {
            assertEquals(volts, OutputPower.volts(watts, ohms), 5e-6);
            assertEquals(watts, OutputPower.watts(OutputPower.volts(watts, ohms), ohms), 1e-12);
        }

        /** 50 mW in 3.2 ohm is 0.4 V exactly by P = V^2 / R, 0.5 W in 3.2 ohm 1.26491 V. */
        @Test
        void standardOutputsAreWhatOhmsLawSays() {
            assertEquals(0.4, OutputPower.volts(OutputPower.STANDARD_WATTS, 3.2), 1e-12);
            assertEquals(1.26491, OutputPower.volts(OutputPower.LARGE_STANDARD_WATTS, 3.2), 5e-6);
            assertEquals(0, OutputPower.watts(0, 8));
        }
    }
}
