package org.slugpeak.core.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Limiter, pulled oscillator, tracking, trimmers and images against tables computed apart from this project. */
class RehearsalLawsTest {

    /** fm/stage-law.csv: an IF valve, a limiter with grid leak, one that saturates. */
    @Test
    void valvesPassOnWhatTheTableSays() {
        Golden table = Golden.of("fm", "stage-law.csv");
        assertTrue(table.size() > 50);
        for (int row = 0; row < table.size(); row++) {
            double expected = table.number(row, "fundamental_mA");
            double found = stage(table.text(row, "stage"))
                    .fundamentalAmpere(table.number(row, "grid_peak_V"), table.number(row, "bias_V"));
            assertEquals(expected, found * 1e3, 1e-3 * expected, "row " + row);
        }
    }

    private static ValveStage stage(String name) {
        return switch (name) {
            case "IF valve" -> new ValveStage(4e-3, 1, 5, Double.POSITIVE_INFINITY);
            case "grid-leak" -> new ValveStage(3e-3, 0.4, 2.5, Double.POSITIVE_INFINITY);
            default -> new ValveStage(3e-3, 1, 2.5, 3e-3);
        };
    }

    /**
     * fm/limiter.csv: both limiter grids behind a converter and two IF valves, 10 uV to 100 mV; critical pairs of Q 60 and 4.4 uH.
     * What a grid loads is the winding's resistance with its partner beside it.
     */
    @Test
    void limiterGridsReadWhatTheTableSays() {
        Golden table = Golden.of("fm", "limiter.csv");
        assertEquals(66, table.size());
        CoupledPair pair = inTune();
        double ohm = pair.transimpedance(10.7e6).abs();
        DiodeDetector grid = new DiodeDetector(
                ThermionicDiode.resting(1100, 1e-4, 0.4, 47e3),
                47e3,
                pair.inputImpedance(10.7e6).abs());
        for (int row = 0; row < table.size(); row++) {
            String kind = table.text(row, "limiter");
            double first = stage("IF valve").fundamentalAmpere(table.number(row, "if2_grid_V")) * ohm;
            LimiterCurve limiter = curve(grid, kind);
            assertDb(first, grid.carrierPeakVolts(table.number(row, "lim1_grid_peak_V")), kind + row);
            assertDb(table.number(row, "read1_V"), limiter.grid().riseVolts(first), kind + row);
            double second = limiter.outputAmpere(first) * ohm;
            assertDb(table.number(row, "read2_V"), limiter.grid().riseVolts(second), kind + row);
            assertDb(table.number(row, "out_mA"), limiter.outputAmpere(second) * 1e3, kind + row);
        }
    }

    private final Map<String, LimiterCurve> curves = new HashMap<>();

    private LimiterCurve curve(DiodeDetector grid, String kind) {
        return curves.computeIfAbsent(
                kind, any -> LimiterCurve.of(new Limiter(grid, stage(kind), kind.equals("grid-leak"))));
    }

    /** Critical, Q 60, 4.4 uH; both windings tuned with the other one there, as the table has them. */
    private static CoupledPair inTune() {
        double omega = 2 * Math.PI * 10.7e6;
        Tank tank = new Tank(4.4e-6, (1 - 0.00555247) / (omega * omega * 4.4e-6), omega * 4.4e-6 / 60);
        return new CoupledPair(tank, tank, 1 / 60.0);
    }

    private static void assertDb(double expected, double found, String where) {
        assertEquals(0, 20 * Math.log10(found / expected), 0.1, where);
    }

    /** rehearsal/pulling.csv, the exact column. */
    @Test
    void theAerialTrimmerPullsTheOscillatorAsTheTableSays() {
        Golden table = Golden.of("rehearsal", "pulling.csv");
        assertTrue(table.size() > 60);
        for (int row = 0; row < table.size(); row++) {
            PulledOscillator oscillator = new PulledOscillator(
                    table.number(row, "oscillator_kHz") * 1e3,
                    table.number(row, "Co_pF") * 1e-12,
                    table.number(row, "signal_kHz") * 1e3,
                    table.number(row, "Cs_pF") * 1e-12,
                    table.number(row, "Qs"),
                    table.number(row, "Cc_pF") * 1e-12);
            double pull = oscillator.pullHz(table.number(row, "trimmer_step_pF") * 1e-12) / 1e3;
            double expected = table.number(row, "pull_exact_kHz");
            assertEquals(expected, pull, 1e-3 * Math.abs(expected) + 2e-5, "row " + row);
        }
    }

    /** rehearsal/tracking.csv: 150 kHz to 18 MHz, intermediate frequencies of 110 to 1600 kHz. */
    @Test
    void threePointTrackingNeedsThePartsOfTheTable() {
        Golden table = Golden.of("rehearsal", "tracking.csv");
        assertTrue(table.size() >= 20);
        for (int row = 0; row < table.size(); row++) {
            double intermediate = table.number(row, "if_kHz") * 1e3;
            TrackingCircuit circuit = TrackingCircuit.exactAt(
                    table.number(row, "Ls_uH") * 1e-6,
                    intermediate,
                    new TrackingPoints(
                            table.number(row, "f1_kHz") * 1e3,
                            table.number(row, "f2_kHz") * 1e3,
                            table.number(row, "f3_kHz") * 1e3));
            double coil = table.number(row, "Lo_uH");
            assertEquals(coil, circuit.oscillatorCoilHenry() * 1e6, 1e-3 * coil, "row " + row);
            double padder = table.number(row, "padder_pF");
            assertEquals(padder, circuit.padderFarad() * 1e12, 2e-3 * padder, "row " + row);
            assertEquals(table.number(row, "trimmer_pF"), circuit.trimmerFarad() * 1e12, 0.02, "row " + row);
            double at = table.number(row, "at_kHz") * 1e3;
            double error = table.number(row, "largest_error_kHz");
            assertEquals(error, circuit.errorHz(at, intermediate) / 1e3, 0.01 * Math.abs(error), "row " + row);
        }
    }

    /** rehearsal/trimmer.csv: swing of a trimmer across a fixed part, the IF at its geometric middle. */
    @Test
    void aTrimmerSwingsACircuitAsTheTableSays() {
        Golden table = Golden.of("rehearsal", "trimmer.csv");
        assertTrue(table.size() > 10);
        for (int row = 0; row < table.size(); row++) {
            double lowest = table.number(row, "trimmer_min_pF");
            double highest = table.number(row, "trimmer_max_pF");
            double turns = table.number(row, "turns_assumed");
            Trimmer trimmer = new Trimmer(lowest, highest, turns);
            double total = table.number(row, "C_total_pF");
            double fixed = total - Math.sqrt(lowest * highest);
            double hz = table.number(row, "if_kHz");
            double low = hz * Math.sqrt(total / (fixed + trimmer.farad(turns + 1)));
            double high = hz * Math.sqrt(total / (fixed + trimmer.farad(-1)));
            assertEquals(table.number(row, "low_kHz"), low, 1e-3, "row " + row);
            assertEquals(table.number(row, "high_kHz"), high, 1e-3, "row " + row);
            double slope = (trimmer.farad(turns / 2 + 0.5) - trimmer.farad(turns / 2 - 0.5)) / total * 100;
            assertEquals(table.number(row, "pct_C_per_turn_mean"), slope, 1e-3, "row " + row);
        }
    }

    /** rehearsal/image.csv: one and two circuits, oscillator above and below. */
    @Test
    void imagesAreAsWeakAsTheTableSays() {
        Golden table = Golden.of("rehearsal", "image.csv");
        assertTrue(table.size() > 300);
        for (int row = 0; row < table.size(); row++) {
            OscillatorSide side =
                    table.text(row, "oscillator").equals("above") ? OscillatorSide.ABOVE : OscillatorSide.BELOW;
            Superhet superhet = new Superhet(table.number(row, "if_kHz") * 1e3, side);
            double[] qs = new double[(int) table.number(row, "circuits")];
            Arrays.fill(qs, table.number(row, "Q"));
            double found = ImageRatio.imageRatioDb(superhet, table.number(row, "signal_kHz") * 1e3, qs);
            assertEquals(table.number(row, "image_ratio_dB"), found, 1e-3, "row " + row);
        }
    }
}
