package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import org.junit.jupiter.api.Test;

/** FM detectors against curves computed apart from this project (shared/reference/fm, loss in series). */
class DiscriminatorTest {

    private static final double CENTRE_HZ = 10.7e6;
    private static final double HENRY = 4.4e-6;

    private static Discriminator of(Golden table, int row) {
        Discriminator tuned = Discriminator.tuned(
                CENTRE_HZ, HENRY, table.number(row, "q1"), table.number(row, "q2"), table.number(row, "kappa"));
        return tuned.withTrimmers(
                off(table.number(row, "primary_off_kHz")), off(table.number(row, "secondary_off_kHz")));
    }

    /** A winding's own resonance moved by so much. */
    private static double off(double kiloHertz) {
        double ratio = CENTRE_HZ / (CENTRE_HZ + kiloHertz * 1e3);
        return ratio * ratio - 1;
    }

    /** fm/scurve-points.csv: 14 detectors from 300 kHz below to 300 kHz above. */
    @Test
    void theCurvesAreThoseOfTheTable() {
        Golden table = Golden.of("fm", "scurve-points.csv");
        assertEquals(14 * 61, table.size());
        for (int row = 0; row < table.size(); row++) {
            Discriminator.Halves halves = of(table, row).at(CENTRE_HZ + table.number(row, "offset_kHz") * 1e3);
            assertEquals(table.number(row, "discriminator_V"), halves.difference(), 2e-6, "row " + row);
            assertEquals(table.number(row, "held_per_V"), halves.held(), 2e-6, "row " + row);
            assertEquals(table.number(row, "half_sum_V"), halves.half(), 2e-6, "row " + row);
        }
    }

    /** fm/scurve-figures.csv, where the table has a zero: 0.5 kHz and 0.5 percent are asked for. */
    @Test
    void zeroSlopeAndPeaksAreThoseOfTheTable() {
        Golden table = Golden.of("fm", "scurve-figures.csv");
        int seen = 0;
        for (int row = 0; row < table.size(); row += 3) {
            if (table.text(row, "zero_kHz").equals("nan")
                    || table.text(row, "upper_peak_kHz").equals("nan")) {
                continue;
            }
            seen++;
            boolean isHeld = table.text(row, "kind").equals("held");
            Discriminator detector = of(table, row);
            DoubleUnaryOperator curve = kiloHertz -> {
                Discriminator.Halves halves = detector.at(CENTRE_HZ + kiloHertz * 1e3);
                return isHeld ? halves.held() : halves.difference();
            };
            double zero = table.number(row, "zero_kHz");
            double found = new BrentSolver(1e-6).solve(100, curve::applyAsDouble, zero - 5, zero + 5);
            assertEquals(zero, found, 0.01, "row " + row);
            double slope = curve.applyAsDouble(zero + 0.5) - curve.applyAsDouble(zero - 0.5);
            double expected = table.number(row, "slope_per_kHz");
            assertEquals(expected, slope, 2e-4 * expected, "row " + row);
            peak(curve, table.number(row, "upper_peak_kHz"), table.number(row, "upper_peak"), GoalType.MAXIMIZE);
            peak(curve, table.number(row, "lower_peak_kHz"), table.number(row, "lower_peak"), GoalType.MINIMIZE);
        }
        assertTrue(seen > 300, "rows " + seen);
    }

    private static void peak(DoubleUnaryOperator curve, double kiloHertz, double volts, GoalType goal) {
        UnivariatePointValuePair found = new BrentOptimizer(1e-7, 1e-7)
                .optimize(
                        new MaxEval(200),
                        goal,
                        new SearchInterval(kiloHertz - 5, kiloHertz + 5),
                        new UnivariateObjectiveFunction(curve::applyAsDouble));
        assertEquals(kiloHertz, found.getPoint(), 0.1);
        assertEquals(volts, found.getValue(), 1e-4 * Math.abs(volts));
    }

    /** fm/capacitor.csv: almost flat against the primary, a minimum against the secondary. */
    @Test
    void theCapacitorReadsWhatTheTableSays() {
        Golden table = Golden.of("fm", "capacitor.csv");
        for (int row = 0; row < table.size(); row++) {
            Discriminator tuned = Discriminator.tuned(
                    CENTRE_HZ, HENRY, table.number(row, "q1"), table.number(row, "q2"), table.number(row, "kappa"));
            double off = off(table.number(row, "off_kHz"));
            boolean isPrimary = table.text(row, "winding").equals("primary");
            Discriminator turned = tuned.withTrimmers(isPrimary ? off : 0, isPrimary ? 0 : off);
            assertEquals(table.number(row, "half_sum_V"), turned.at(CENTRE_HZ).half(), 2e-6, "row " + row);
        }
    }
}
