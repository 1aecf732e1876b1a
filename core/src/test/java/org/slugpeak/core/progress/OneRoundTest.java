package org.slugpeak.core.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.receiver.CoupledPair;
import org.slugpeak.core.receiver.Tank;

/** What one round of peaking leaves, on the exact circuit and on the formula that {@link CouplingWatch} quotes. */
class OneRoundTest {

    private static final double IF_HZ = 455e3;
    private static final double Q = 80;

    /** Loss after both slugs were peaked once, dB; the partner of the first stands at the worst place for it. */
    private static double byFormula(double c) {
        double a = c / 2;
        double b = c * a / (1 + a * a);
        return 20 * Math.log10(Math.hypot(1 - a * b + c, a + b) / (1 + c));
    }

    @Test
    void isWorstAtTwoThirdsOfTheSquareOfTheCriticalCoupling() {
        double worst = 0;
        double at = 0;
        for (double c = 0.01; c <= 1; c += 0.001) {
            if (byFormula(c) > worst) {
                worst = byFormula(c);
                at = c;
            }
        }
        assertEquals(0.103, worst, 0.0005);
        assertEquals(0.667, at, 0.005);
    }

    /** The meshes of the exact circuit agree with the narrow-band formula. */
    @Test
    void leavesAsMuchOnTheExactCircuit() {
        double worst = 0;
        for (double startFraction = -0.05; startFraction <= 0.05; startFraction += 0.0025) {
            worst = Math.max(worst, onTheCircuit(Math.sqrt(0.667), startFraction));
        }
        assertEquals(0.103, worst, 0.0005);
    }

    private static double onTheCircuit(double kappa, double startFraction) {
        Tank tank = Tank.tuned(IF_HZ, 110e-12, Q);
        CoupledPair pair = new CoupledPair(tank, tank, kappa / Q);
        double first = peak(primary -> output(pair, primary, startFraction));
        double second = peak(secondary -> output(pair, first, secondary));
        double primary = first;
        double secondary = second;
        for (int round = 0; round < 40; round++) {
            double partner = secondary;
            primary = peak(x -> output(pair, x, partner));
            double other = primary;
            secondary = peak(x -> output(pair, other, x));
        }
        return 20 * Math.log10(output(pair, primary, secondary) / output(pair, first, second));
    }

    private static double output(CoupledPair pair, double primary, double secondary) {
        return pair.withSlugs(primary, secondary).transimpedance(IF_HZ).abs();
    }

    private static double peak(DoubleUnaryOperator output) {
        UnivariateFunction function = output::applyAsDouble;
        return new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                        new MaxEval(500),
                        new UnivariateObjectiveFunction(function),
                        GoalType.MAXIMIZE,
                        new SearchInterval(-0.1, 0.1))
                .getPoint();
    }
}
