package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

/** Widths of one to three coupled pairs, and what a slug costs, against tables computed apart from this project. */
class StripTest {

    private static double db(double ratio) {
        return 20 * Math.log10(ratio);
    }

    /** Full width between the outermost points so far below a level. */
    private static double width(DoubleUnaryOperator gainDb, double centreHz, double stepHz, double levelDb) {
        double width = 0;
        for (int side = -1; side <= 1; side += 2) {
            int sign = side;
            double last = Double.NaN;
            for (int i = 0; i < 1200; i++) {
                double from = gainDb.applyAsDouble(centreHz + sign * i * stepHz);
                double to = gainDb.applyAsDouble(centreHz + sign * (i + 1) * stepHz);
                if (from >= levelDb && to < levelDb) {
                    last = new BrentSolver(1e-6)
                            .solve(
                                    100,
                                    hz -> gainDb.applyAsDouble(centreHz + sign * hz) - levelDb,
                                    i * stepHz,
                                    (i + 1) * stepHz);
                }
            }
            width += last;
        }
        return width;
    }

    /** rehearsal/if-strips.csv: 110 kHz to 10.7 MHz, equal and unequal Q, 0.7 to 1.5 times critical, one to three pairs. */
    @Test
    void widthsAndDipsAreThoseOfTheTable() {
        Golden table = Golden.of("rehearsal", "if-strips.csv");
        assertTrue(table.size() > 200);
        for (int row = 0; row < table.size(); row += 3) {
            double hz = table.number(row, "if_kHz") * 1e3;
            double q1 = table.number(row, "Q1");
            double q2 = table.number(row, "Q2");
            double farad = table.number(row, "C_pF") * 1e-12;
            CoupledPair pair = new CoupledPair(
                    Tank.tuned(hz, farad, q1),
                    Tank.tuned(hz, farad, q2),
                    table.number(row, "kappa") * CoupledPair.criticalCoupling(q1, q2));
            for (int i = row; i < Math.min(row + 3, table.size()); i++) {
                double pairs = table.number(i, "pairs");
                DoubleUnaryOperator gain =
                        f -> pairs * db(pair.transimpedance(f).abs());
                double centre = gain.applyAsDouble(hz);
                double step = hz / q1 / 40;
                double six = table.number(i, "w6_kHz");
                assertEquals(six, width(gain, hz, step, centre - 6.0206) / 1e3, 1e-4 * six, "row " + i);
                double twenty = table.number(i, "w20_kHz");
                assertEquals(twenty, width(gain, hz, step, centre - 20) / 1e3, 1e-4 * twenty, "row " + i);
                double ohm = table.number(i, "transimpedance_one_pair_kohm") * 1e3;
                assertEquals(ohm, pair.transimpedance(hz).abs(), 1e-4 * ohm, "row " + i);
            }
        }
    }

    /** physics/strips.csv, another person's, with the loss across the coils: 0.5 percent is asked for. */
    @Test
    void widthsAgreeWithTheSecondTable() {
        Golden table = Golden.of("physics", "strips.csv").where("kappa", "1.0");
        assertTrue(table.size() > 30, "rows " + table.size());
        for (int row = 0; row < table.size(); row++) {
            double hz = table.number(row, "if_kHz") * 1e3;
            double q = table.number(row, "q1");
            if (q != table.number(row, "q2")) {
                continue;
            }
            Tank tank = Tank.tuned(hz, 100e-12, q);
            CoupledPair pair = new CoupledPair(tank, tank, 1 / q);
            double pairs = table.number(row, "pairs");
            DoubleUnaryOperator gain = f -> pairs * db(pair.transimpedance(f).abs());
            double six = table.number(row, "width_6dB_kHz");
            double found = width(gain, hz, hz / q / 40, gain.applyAsDouble(hz) - 6.0206) / 1e3;
            assertEquals(six, found, 5e-3 * six, "row " + row);
        }
    }

    /** rehearsal/slug.csv: how far one winding goes for 0.1 to 6 dB, either way. */
    @Test
    void aSlugCostsWhatTheTableSays() {
        Golden table = Golden.of("rehearsal", "slug.csv");
        assertTrue(table.size() > 300);
        for (int row = 0; row < table.size(); row += 5) {
            double hz = table.number(row, "if_kHz") * 1e3;
            double q = table.number(row, "Q");
            Tank tank = Tank.tuned(hz, 100e-12, q);
            CoupledPair pair = new CoupledPair(tank, tank, table.number(row, "kappa") / q);
            double best = 0;
            double at = 0;
            for (double e = -0.05; e <= 0.05; e += 1e-5) {
                double here = pair.withSlugs(0, e).transimpedance(hz).abs();
                at = here > best ? e : at;
                best = Math.max(best, here);
            }
            for (int i = row; i < row + 5; i++) {
                double up = pair.withSlugs(0, at + table.number(i, "plus_pct_L") / 100)
                        .transimpedance(hz)
                        .abs();
                assertEquals(table.number(i, "fall_dB"), db(best / up), 0.01, "row " + i);
            }
        }
    }
}
