package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.reading.Condition;

/** Peaks whose place and height somebody else has certified or computed. */
class ReferencePeaksTest {

    private final Told told = new Told();
    private final PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);

    /** Feeds a curve over an abscissa that is swept at a steady speed, 50 readings/s. */
    private void sweep(DoubleUnaryOperator curve, double from, double to, double seconds) {
        long readings = Math.round(50 * seconds);
        for (long i = 0; i <= readings; i++) {
            finder.accept(i * 20_000_000L, curve.applyAsDouble(from + (to - from) * i / readings), Condition.OK);
        }
    }

    private static double place(long nanos, double from, double to, double seconds) {
        return from + (to - from) * (nanos / 1e9) / seconds;
    }

    /**
     * NIST Statistical Reference Datasets, nonlinear regression, Eckerle4 (K. Eckerle, circular interference transmittance):
     * certified b1 = 1.5543827178, b2 = 4.0888321754, b3 = 451.54121844.
     */
    private static double eckerle4(double x) {
        double b1 = 1.5543827178;
        double b2 = 4.0888321754;
        double b3 = 451.54121844;
        return b1 / b2 * Math.exp(-0.5 * Math.pow((x - b3) / b2, 2));
    }

    @Test
    void findsThePeakOfEckerle4WhereNistCertifiesIt() {
        sweep(ReferencePeaksTest::eckerle4, 430, 475, 20);
        Told.Word passed = told.first("passed");
        assertEquals(1, told.count("passed"));
        assertEquals(451.54121844, place(passed.atNanos(), 430, 475, 20), 0.1);
        assertEquals(1.5543827178 / 4.0888321754, passed.value(), 1e-4);
        assertEquals(451.54121844, place(passed.tNanos(), 430, 475, 20), 0.7);
    }

    /**
     * NIST Statistical Reference Datasets, nonlinear regression, Gauss1 (B. Rust): certified b1 = 98.778210871,
     * b2 = 0.010497276517, b3 = 100.48990633, b4 = 67.481111276, b5 = 23.129773360, b6 = 71.994503004, b7 = 178.99805021,
     * b8 = 18.389389025; two peaks on a falling base.
     */
    private static double gauss1(double x) {
        return 98.778210871 * Math.exp(-0.010497276517 * x)
                + 100.48990633 * Math.exp(-Math.pow((x - 67.481111276) / 23.129773360, 2))
                + 71.994503004 * Math.exp(-Math.pow((x - 178.99805021) / 18.389389025, 2));
    }

    /** Where the sum of the certified terms is greatest between two bounds: golden section to 1e-9. */
    private static double top(double from, double to) {
        double golden = (Math.sqrt(5) - 1) / 2;
        double a = from;
        double b = to;
        while (b - a > 1e-9) {
            double c = b - golden * (b - a);
            double d = a + golden * (b - a);
            if (gauss1(c) > gauss1(d)) {
                b = d;
            } else {
                a = c;
            }
        }
        return (a + b) / 2;
    }

    @Test
    void findsBothPeaksOfGauss1() {
        sweep(ReferencePeaksTest::gauss1, 1, 250, 40);
        Told.Word passed = told.first("passed");
        assertEquals(top(50, 90), place(passed.atNanos(), 1, 250, 40), 1);
        assertEquals(gauss1(top(50, 90)), passed.value(), 0.02);
        assertEquals(gauss1(top(160, 200)), told.first("two-peaks").value(), 0.02);
        assertEquals(1, told.count("two-peaks"));
    }

    @Test
    void findsBothPeaksOfGauss1FromTheOtherEnd() {
        sweep(ReferencePeaksTest::gauss1, 250, 1, 40);
        assertEquals(2, told.count("passed"));
        assertEquals(gauss1(top(50, 90)), told.first("two-peaks").value(), 0.02);
    }

    /**
     * An IF strip computed by a circuit simulator (shared/reference/spice, ngspice 39): output at fixed 455 kHz against
     * one slug. Whatever the coupling there is one maximum, at zero where the partners are tuned.
     */
    @ParameterizedTest
    @CsvSource({"k0p5, 1", "k1, 1", "k2, 1", "k0p5, 4", "k1, 4", "k2, 4", "k1, 6"})
    void findsTheOneMaximumOfASlug(String coupling, int column) throws IOException {
        Path file = Path.of(
                System.getProperty("slugpeak.shared"), "reference", "spice", "strip_" + coupling + "_slugs.csv");
        List<double[]> rows = Files.readAllLines(file).stream()
                .filter(line -> !line.startsWith("#") && !line.startsWith("slug_pct"))
                .map(line -> numbers(line))
                .toList();
        double[] highest =
                rows.stream().reduce((a, b) -> a[column] >= b[column] ? a : b).orElseThrow();
        for (int i = 0; i < rows.size(); i++) {
            finder.accept(i * 200_000_000L, rows.get(i)[column], Condition.OK);
        }
        assertEquals(1, told.count("passed"));
        assertEquals(0, told.count("two-peaks"));
        Told.Word passed = told.first("passed");
        assertEquals(highest[0], rows.get((int) (passed.atNanos() / 200_000_000L))[0], 0.15);
        assertEquals(1, passed.value() / highest[column], 2e-3);
    }

    private static double[] numbers(String line) {
        String[] fields = line.split(",", -1);
        double[] numbers = new double[fields.length];
        for (int i = 0; i < fields.length; i++) {
            numbers[i] = Double.parseDouble(fields[i]);
        }
        return numbers;
    }
}
