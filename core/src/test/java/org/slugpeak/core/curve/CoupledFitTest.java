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

    private static ResponseCurve noisy(SplittableRandom random, double q, double kappa, double noise) throws Refused {
        CoupledFit truth = new CoupledFit(1, 455e3, 0, q, 0, kappa, 0, 0, 0.8);
        return ResponseCurve.through(IntStream.rangeClosed(-20, 20)
                .mapToObj(kHz -> 455e3 + kHz * 1e3)
                .map(hz ->
                        new ResponsePoint(hz, Math.max(1e-6, truth.levelAt(hz) + noise * 0.8 * random.nextGaussian())))
                .toList());
    }
}
