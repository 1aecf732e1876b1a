package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** IF transformers against a circuit simulator (shared/reference/spice) and against the handbooks. */
class CoupledPairTest {

    private static final double F0 = 455e3;
    private static final double PASSBAND_TOLERANCE_DB = 0.05;

    private static CoupledPair transformer(double q1, double q2, double timesCritical) {
        return new CoupledPair(
                Tank.tuned(F0, 110e-12, q1),
                Tank.tuned(F0, 110e-12, q2),
                timesCritical * CoupledPair.criticalCoupling(q1, q2));
    }

    private static double db(double ratio) {
        return 20 * Math.log10(ratio);
    }

    /** Output of the reference strip in millivolts: 10 uV into two stages of 2 mS. */
    private static double stripMillivolts(CoupledPair first, CoupledPair second, double frequencyHz) {
        return 10e-3
                * 2e-3
                * 2e-3
                * first.transimpedance(frequencyHz)
                        .multiply(second.transimpedance(frequencyHz))
                        .abs();
    }

    @Nested
    class AgainstTheCircuitSimulator {

        @ParameterizedTest
        @CsvSource({
            "ift_q80_80.csv, 80, 80, 0.5, mag_k0.5kc",
            "ift_q80_80.csv, 80, 80, 1, mag_k1.0kc",
            "ift_q80_80.csv, 80, 80, 2, mag_k2.0kc",
            "ift_q60_100.csv, 60, 100, 0.5, mag_k0.5kc",
            "ift_q60_100.csv, 60, 100, 1, mag_k1.0kc",
            "ift_q60_100.csv, 60, 100, 2, mag_k2.0kc",
        })
        void oneTransformerAgreesOverTheWholeSweep(String file, double q1, double q2, double coupling, String column) {
            Golden golden = Golden.spice(file);
            double[] kilohertz = golden.column("f_kHz");
            double[] magnitude = golden.column(column);
            double unit = transformer(q1, q2, 1).transimpedance(F0).abs();
            CoupledPair pair = transformer(q1, q2, coupling);
            assertEquals(201, kilohertz.length);
            for (int i = 0; i < kilohertz.length; i++) {
                double modelled = pair.transimpedance(kilohertz[i] * 1e3).abs() / unit;
                assertEquals(0, db(modelled / magnitude[i]), 1e-5, "dB at " + kilohertz[i] + " kHz");
            }
        }

        @ParameterizedTest
        @CsvSource({"strip_k0p5_freq.csv, 0.5", "strip_k1_freq.csv, 1", "strip_k2_freq.csv, 2"})
        void theStripAgreesAgainstFrequencyTunedAndDetuned(String file, double coupling) {
            Golden golden = Golden.spice(file);
            double[] kilohertz = golden.column("f_kHz");
            double[] tuned = golden.column("Vout_mV_all_tuned");
            double[] detuned = golden.column("Vout_mV_L1_plus2pct");
            CoupledPair pair = transformer(80, 80, coupling);
            for (int i = 0; i < kilohertz.length; i++) {
                double f = kilohertz[i] * 1e3;
                assertEquals(0, db(stripMillivolts(pair, pair, f) / tuned[i]), PASSBAND_TOLERANCE_DB / 100);
                assertEquals(
                        0,
                        db(stripMillivolts(pair.withSlugs(0.02, 0), pair, f) / detuned[i]),
                        PASSBAND_TOLERANCE_DB / 100);
            }
        }

        @ParameterizedTest
        @CsvSource({"strip_k0p5_slugs.csv, 0.5", "strip_k1_slugs.csv, 1", "strip_k2_slugs.csv, 2"})
        void theStripAgreesAgainstEverySlug(String file, double coupling) {
            Golden golden = Golden.spice(file);
            double[] percent = golden.column("slug_pct");
            CoupledPair pair = transformer(80, 80, coupling);
            compare(golden.column("Vout_mV_L1"), percent, d -> stripMillivolts(pair.withSlugs(d, 0), pair, F0));
            compare(golden.column("Vout_mV_L2"), percent, d -> stripMillivolts(pair.withSlugs(0, d), pair, F0));
            compare(golden.column("Vout_mV_L3"), percent, d -> stripMillivolts(pair, pair.withSlugs(d, 0), F0));
            compare(golden.column("Vout_mV_L4"), percent, d -> stripMillivolts(pair, pair.withSlugs(0, d), F0));
            compare(
                    golden.column("Vout_mV_L1_partnerplus2"),
                    percent,
                    d -> stripMillivolts(pair.withSlugs(d, 0.02), pair, F0));
            compare(
                    golden.column("Vout_mV_L1_partnerminus1"),
                    percent,
                    d -> stripMillivolts(pair.withSlugs(d, -0.01), pair, F0));
            compare(
                    golden.column("Vout_mV_L1L2_together"),
                    percent,
                    d -> stripMillivolts(pair.withSlugs(d, d), pair, F0));
            compare(
                    golden.column("Vout_mV_all_together"),
                    percent,
                    d -> stripMillivolts(pair.withSlugs(d, d), pair.withSlugs(d, d), F0));
        }

        private static void compare(double[] millivolts, double[] percent, DoubleUnaryOperator model) {
            assertEquals(61, percent.length);
            for (int i = 0; i < percent.length; i++) {
                assertEquals(
                        0,
                        db(model.applyAsDouble(percent[i] / 100) / millivolts[i]),
                        PASSBAND_TOLERANCE_DB / 100,
                        percent[i] + " %");
            }
        }

        @Test
        void turningTheSlugsInTurnEndsWhereTheReferenceEnds() {
            Golden golden = Golden.spice("peaking_trajectory.csv");
            double[] coupling = golden.column("k_over_kc");
            double[] l1 = golden.column("L1_pct");
            double[] l2 = golden.column("L2_pct");
            double[] over = golden.column("out_over_centre");
            assertTrue(over.length > 100);
            for (int i = 0; i < over.length; i++) {
                CoupledPair pair = transformer(80, 80, coupling[i]);
                double centre = pair.transimpedance(F0).abs();
                double now = pair.withSlugs(l1[i] / 100, l2[i] / 100)
                        .transimpedance(F0)
                        .abs();
                assertEquals(over[i], now / centre, 2e-5, "row " + i);
            }
        }
    }

    @Nested
    class ByTheHandbooks {

        /** Critical coupling 1/sqrt(Q1 Q2): Terman, Radio Engineers' Handbook (1943), section 3. */
        @ParameterizedTest
        @CsvSource({"80, 80, 0.0125", "60, 100, 0.01290994"})
        void criticalCouplingIsTheReciprocalGeometricMeanOfTheQ(double q1, double q2, double expected) {
            assertEquals(expected, CoupledPair.criticalCoupling(q1, q2), 5e-9);
        }

        @Test
        void criticalCouplingGivesTheGreatestOutputAtTheCentre() {
            double critical = transformer(60, 100, 1).transimpedance(F0).abs();
            for (double factor = 0.5; factor < 2; factor += 0.1) {
                if (Math.abs(factor - 1) > 0.05) {
                    assertTrue(transformer(60, 100, factor).transimpedance(F0).abs() < critical);
                }
            }
        }

        @Test
        void unequalQHaveNoDipBetweenCriticalAndTransitionalCoupling() {
            assertEquals(0.01374369, CoupledPair.transitionalCoupling(60, 100), 5e-9);
            assertEquals(0.0125, CoupledPair.transitionalCoupling(80, 80), 1e-12);
        }

        /** kQ 2: humps at x = sqrt(3), height 1; valley -1.938 dB (narrow-band theory; 3 % for the real circuit). */
        @Test
        void overCoupledTransformersHaveTwoHumpsOfAlmostEqualHeight() {
            CoupledPair pair = transformer(80, 80, 2);
            double unit = transformer(80, 80, 1).transimpedance(F0).abs();
            assertEquals(1.0217, pair.transimpedance(450.125e3).abs() / unit, 1e-4);
            assertEquals(0.9784, pair.transimpedance(459.976e3).abs() / unit, 1e-4);
            assertEquals(-1.938, db(pair.transimpedance(F0).abs() / unit), 0.001);
            double x = 80 * (459.976e3 / F0 - F0 / 459.976e3);
            assertEquals(Math.sqrt(3), x, 0.03 * Math.sqrt(3));
        }

        /** Handbook example: Q 50, kQ 1.5, 16 MHz, at 8 MHz: -59 dB (Reference Data for Engineers, simple bandpass). */
        @Test
        void farFromResonanceTheExactFormMeetsTheWorkedExample() {
            Tank tank = Tank.tuned(16e6, 110e-12, 50);
            CoupledPair pair = new CoupledPair(tank, tank, 1.5 / 50);
            double centre = pair.transimpedance(16e6).abs();
            double loss = db(pair.transimpedance(8e6).abs() / centre);
            assertEquals(-59, loss, 0.5);
            assertEquals(-58.745, loss, 0.001);
        }

        /** sqrt2 (2^(1/m) - 1)^(1/4) in units of f0/Q, narrow band. */
        @ParameterizedTest
        @CsvSource({"1, 1.414214", "2, 1.134543", "3, 1.009777"})
        void criticalPairsInCascadeShrinkAsTheFormulaSays(int pairs, double expected) {
            double q = 2000;
            CoupledPair pair = transformer(q, q, 1);
            double half = Math.pow(2, -1.0 / (2 * pairs));
            double unit = pair.transimpedance(F0).abs();
            double width = edge(pair, unit * half, F0, F0 * 1.01) - edge(pair, unit * half, F0, F0 * 0.99);
            assertEquals(expected, width / (F0 / q), 2e-3);
        }

        private static double edge(CoupledPair pair, double level, double inside, double outside) {
            double in = inside;
            double out = outside;
            for (int i = 0; i < 60; i++) {
                double middle = (in + out) / 2;
                if (pair.transimpedance(middle).abs() > level) {
                    in = middle;
                } else {
                    out = middle;
                }
            }
            return in;
        }
    }

    @Nested
    class OneSlugTwoSlugsAndFrequency {

        private static int maxima(DoubleUnaryOperator curve, double from, double to) {
            int count = 0;
            int points = 600;
            for (int i = 1; i < points; i++) {
                double step = (to - from) / points;
                double here = curve.applyAsDouble(from + i * step);
                if (here > curve.applyAsDouble(from + (i - 1) * step)
                        && here >= curve.applyAsDouble(from + (i + 1) * step)) {
                    count++;
                }
            }
            return count;
        }

        @ParameterizedTest
        @CsvSource({"0.5", "1", "2", "3"})
        void oneSlugAtAFixedFrequencyHasOneMaximumWhateverTheCoupling(double coupling) {
            CoupledPair pair = transformer(80, 80, coupling);
            for (double partner : new double[] {-0.02, -0.01, 0, 0.01, 0.02}) {
                assertEquals(
                        1,
                        maxima(
                                d -> pair.withSlugs(d, partner)
                                        .transimpedance(F0)
                                        .abs(),
                                -0.08,
                                0.08));
            }
        }

        @Test
        void twoHumpsAppearAgainstFrequencyAndWithBothSlugsTogether() {
            CoupledPair pair = transformer(80, 80, 2);
            assertEquals(2, maxima(f -> pair.transimpedance(f).abs(), 430e3, 480e3));
            assertEquals(2, maxima(d -> pair.withSlugs(d, d).transimpedance(F0).abs(), -0.05, 0.05));
        }

        @Test
        void theSlugLawMakesASecondMaximumFiveTurnsFurtherIn() {
            SlugLaw law = Tarnfield.slugLaw();
            CoupledPair pair = transformer(70, 70, 0.95);
            DoubleUnaryOperator curve = turns -> pair.withSlugs(law.inductanceChange(turns), 0)
                    .transimpedance(F0)
                    .abs();
            assertEquals(2, maxima(curve, -4, 9));
            assertEquals(5.5, law.secondPositionTurns(), 0.01);
            assertEquals(curve.applyAsDouble(0), curve.applyAsDouble(law.secondPositionTurns()), 1e-6);
        }
    }
}
