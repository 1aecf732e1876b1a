package org.slugpeak.core.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.receiver.CoupledPair;
import org.slugpeak.core.receiver.DiodeDetector;
import org.slugpeak.core.receiver.EnvelopeDetector;
import org.slugpeak.core.receiver.Tank;
import org.slugpeak.core.receiver.ThermionicDiode;
import org.slugpeak.core.word.Refused;

class CoupledFitTest {

    /** One transformer, 110 pF, Q 80, 455 kHz, as simulated with ngspice 39. */
    @ParameterizedTest(name = "one transformer of {1} times critical coupling")
    @CsvSource({"1, 0.5", "2, 1", "3, 2"})
    void findsTheCircuitOfASimulatedTransformer(int column, double kappa) throws Refused {
        CoupledFit fit = CoupledFit.of(SpiceTable.curve("ift_q80_80.csv", column), 1);
        assertEquals(455e3, fit.centreHz(), 1);
        assertEquals(80, fit.q(), 0.01);
        assertEquals(kappa, fit.kappa(), 2e-4);
        assertTrue(fit.scatter() < 1e-6, "the form is exact: " + fit.scatter());
        assertEquals(kappa > 1, fit.isOverCoupled());
    }

    /** Two such transformers with a valve between. */
    @ParameterizedTest(name = "two transformers of {1} times critical coupling")
    @CsvSource({"strip_k0p5_freq.csv, 0.5", "strip_k1_freq.csv, 1", "strip_k2_freq.csv, 2"})
    void findsTheCircuitsOfASimulatedStrip(String file, double kappa) throws Refused {
        CoupledFit fit = CoupledFit.of(SpiceTable.curve(file, 1), 2);
        assertEquals(455e3, fit.centreHz(), 1);
        assertEquals(80, fit.q(), 0.01);
        assertEquals(kappa, fit.kappa(), 2e-4);
    }

    @Test
    void uncertaintiesAreHonestUnderNoise() throws Refused {
        SplittableRandom random = new SplittableRandom(39);
        int within = 0;
        for (int round = 0; round < 100; round++) {
            CoupledFit fit = CoupledFit.of(noisy(random, 70, 0.95, 0.004), 1);
            within += Math.abs(fit.centreHz() - 455e3) < 2 * fit.centreSigmaHz() ? 1 : 0;
            within += Math.abs(fit.q() - 70) < 2 * fit.qSigma() ? 1 : 0;
            within += Math.abs(fit.kappa() - 0.95) < 2 * fit.kappaSigma() ? 1 : 0;
        }
        assertTrue(within >= 270, "two sigma should hold for about 95 of 100, held for " + within + " of 300");
    }

    @Test
    void slightlyOverCoupledIsNotSaidForCertain() throws Refused {
        CoupledFit fit = CoupledFit.of(noisy(new SplittableRandom(1), 70, 1.02, 0.02), 1);
        assertFalse(fit.isOverCoupled(), fit::toString);
        assertTrue(CoupledFit.of(noisy(new SplittableRandom(2), 70, 2, 0.02), 1).isOverCoupled());
    }

    /** A critical pair whose top a limiter holds down: on seeds 0 to 99, with 0.3 percent of noise, never over-coupled. */
    @ParameterizedTest(name = "limited by {0}")
    @ValueSource(doubles = {0.2, 0.5, 1, 2})
    void aLimitedCriticalPairIsNotOverCoupled(double limit) throws Refused {
        CoupledFit truth = new CoupledFit(1, 455e3, 0, 70, 0, 1, 0, 0, 0.8, new CoupledFit.Bend(0, limit));
        int held = 0;
        for (int seed = 0; seed < 100; seed++) {
            CoupledFit fit = CoupledFit.of(noisy(new SplittableRandom(seed), truth, 0.003), 1);
            assertFalse(fit.kappa() - 3 * fit.kappaSigma() > 1, "seed " + seed + " " + fit);
            held += Math.abs(fit.kappa() - 1) < 2 * fit.kappaSigma() ? 1 : 0;
        }
        assertTrue(held >= 90, "held " + held);
    }

    /** The toe of a thermionic diode (the form of the fit is another) on seeds 0 to 99: Q 70 and 0.949 of critical, two pairs. */
    @ParameterizedTest(name = "strongest signal of {0} V at the diode")
    @ValueSource(doubles = {0.3, 1, 1.6, 3})
    void theToeOfAValveDetectorIsAllowedFor(double volts) throws Refused {
        EnvelopeDetector detector =
                EnvelopeDetector.of(new DiodeDetector(ThermionicDiode.resting(1100, 3.2e-5, 0.22, 470e3), 470e3, 0));
        CoupledFit truth = new CoupledFit(2, 455e3, 0, 70, 0, 0.949, 0, 0, volts, CoupledFit.Bend.STRAIGHT);
        int q = 0;
        int kappa = 0;
        for (int seed = 0; seed < 100; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            CoupledFit fit = CoupledFit.of(
                    ResponseCurve.through(IntStream.rangeClosed(-15, 15)
                            .mapToObj(kHz -> 455e3 + kHz * 1e3)
                            .map(hz -> new ResponsePoint(
                                    hz, detector.riseVolts(truth.levelAt(hz)) + 0.002 * volts * random.nextGaussian()))
                            .toList()),
                    2);
            q += Math.abs(fit.q() - 70) < 2 * fit.qSigma() ? 1 : 0;
            kappa += Math.abs(fit.kappa() - 0.949) < 2 * fit.kappaSigma() ? 1 : 0;
            assertFalse(fit.isOverCoupled(), "seed " + seed + " " + fit);
        }
        assertTrue(q >= 90 && kappa >= 90, "Q held for " + q + ", coupling for " + kappa + " of 100");
    }

    /** Q 40 and 110, 1.05 of critical, as the circuit has it: it looks like 0.83 of equal windings, and the bound for Qs of 3 to 1 holds it. */
    @Test
    void whatUnequalQsHideIsTold() throws Refused {
        CoupledPair pair = new CoupledPair(
                Tank.tuned(455e3, 110e-12, 40),
                Tank.tuned(455e3, 110e-12, 110),
                1.05 * CoupledPair.criticalCoupling(40, 110));
        CoupledFit fit = CoupledFit.of(
                ResponseCurve.through(IntStream.rangeClosed(-30, 30)
                        .mapToObj(kHz -> 455e3 + kHz * 1e3)
                        .map(hz -> new ResponsePoint(hz, pair.transimpedance(hz).abs()))
                        .toList()),
                1);
        assertTrue(fit.kappa() < 0.9, fit::toString);
        assertEquals(1.05, fit.kappaIfQsDifferBy(110 / 40.0), 0.02);
        assertTrue(fit.kappaIfQsDifferBy(3) > 1.05);
    }

    @Test
    void fittedLevelFollowsThePoints() throws Refused {
        ResponseCurve curve = noisy(new SplittableRandom(3), 70, 1.5, 0);
        CoupledFit fit = CoupledFit.of(curve, 1);
        for (ResponsePoint point : curve.points()) {
            assertEquals(
                    point.level(),
                    fit.levelAt(point.hz()),
                    1e-6 * curve.highest().level());
        }
    }

    @Test
    void refusesFewerPointsThanItNeeds() {
        List<ResponsePoint> four = IntStream.range(0, 4)
                .mapToObj(i -> new ResponsePoint(450e3 + i * 3e3, 1 + i % 2))
                .toList();
        assertThrows(Refused.class, () -> CoupledFit.of(ResponseCurve.through(four), 1));
    }

    @Test
    void refusesPointsOnTheFlatTopOnly() throws Refused {
        SplittableRandom random = new SplittableRandom(4);
        ResponseCurve top = ResponseCurve.through(IntStream.range(0, 9)
                .mapToObj(i -> new ResponsePoint(454.8e3 + i * 50, 1 + 0.01 * random.nextGaussian()))
                .toList());
        Refused refused = assertThrows(Refused.class, () -> CoupledFit.of(top, 1));
        assertTrue(refused.getMessage().contains("points"), refused.getMessage());
    }

    private static CoupledFit truth(double q, double kappa) {
        return new CoupledFit(1, 455e3, 0, q, 0, kappa, 0, 0, 0.8, CoupledFit.Bend.STRAIGHT);
    }

    private static ResponseCurve noisy(SplittableRandom random, double q, double kappa, double noise) throws Refused {
        return noisy(random, truth(q, kappa), noise);
    }

    private static ResponseCurve noisy(SplittableRandom random, CoupledFit truth, double noise) throws Refused {
        return ResponseCurve.through(IntStream.rangeClosed(-20, 20)
                .mapToObj(kHz -> 455e3 + kHz * 1e3)
                .map(hz ->
                        new ResponsePoint(hz, Math.max(1e-6, truth.levelAt(hz) + noise * 0.8 * random.nextGaussian())))
                .toList());
    }
}
