package org.slugpeak.core.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.word.Refused;

/** Discriminators computed apart from this project (shared/reference/fm): 0.5 kHz and 0.5 percent are asked for. */
class SignedCurveTest {

    private static final double CENTRE_HZ = 10.7e6;

    /** One detector of the tables. */
    private record Case(String key, List<ResponsePoint> points, List<Double> figures) {

        double zeroKhz() {
            return figures.get(0);
        }
    }

    private static List<String[]> rows(String file) {
        Path path = Path.of(System.getProperty("slugpeak.shared"), "reference", "fm", file);
        try {
            return Files.readAllLines(path).stream()
                    .filter(line -> Character.isDigit(line.charAt(0)))
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String key(String[] row) {
        return IntStream.range(0, 5)
                .mapToObj(i -> Double.valueOf(row[i]).toString())
                .toList()
                .toString();
    }

    /** Those whose peaks lie within the points of the table. */
    private static List<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (String[] figures : rows("scurve-figures.csv")) {
            List<ResponsePoint> points = rows("scurve-points.csv").stream()
                    .filter(row -> key(row).equals(key(figures)) && figures[5].equals("discriminator"))
                    .map(row ->
                            new ResponsePoint(CENTRE_HZ + Double.parseDouble(row[5]) * 1e3, Double.parseDouble(row[8])))
                    .toList();
            if (!points.isEmpty()) {
                cases.add(new Case(
                        key(figures),
                        points,
                        IntStream.range(6, 15)
                                .mapToObj(i -> Double.valueOf(figures[i]))
                                .toList()));
            }
        }
        assertEquals(14, cases.size());
        return cases;
    }

    @Test
    void findsZeroSlopePeaksAndStraightnessOfTheTables() throws Refused {
        for (Case each : cases()) {
            SignedCurve curve = SignedCurve.through(each.points());
            List<Double> figures = each.figures();
            assertEquals(each.zeroKhz(), (curve.zeroHz().value() - CENTRE_HZ) / 1e3, 0.5, each.key());
            assertEquals(1, curve.slopePerHz().value() * 1e3 / figures.get(1), 0.005, each.key() + " slope");
            SignedCurve.Peak upper = curve.upperPeak();
            SignedCurve.Peak lower = curve.lowerPeak();
            if (Math.abs(figures.get(2)) < 280) {
                assertEquals(figures.get(2), (upper.hz().value() - CENTRE_HZ) / 1e3, 2, each.key() + " upper");
                assertEquals(1, upper.level().value() / figures.get(3), 0.005, each.key() + " upper");
            }
            if (Math.abs(figures.get(4)) < 280) {
                assertEquals(figures.get(4), (lower.hz().value() - CENTRE_HZ) / 1e3, 2, each.key() + " lower");
                assertEquals(1, lower.level().value() / figures.get(5), 0.005, each.key() + " lower");
            }
            if (curve.reachHz() > 90e3) {
                SignedCurve.Swing swing = curve.swing(75e3);
                assertEquals(figures.get(7) / 100, swing.asymmetry().value(), 0.01, each.key() + " asymmetry");
                assertEquals(figures.get(8) / 100, swing.bend().value(), 0.01, each.key() + " bend");
            }
        }
    }

    /** Seeds 0 to 99; noise of 1 percent of the upper peak. Few points know their scatter badly: two deviations hold for 85 to 95 of 100. */
    @Test
    void uncertaintiesHoldUnderNoise() throws Refused {
        for (Case each : cases()) {
            int zero = 0;
            int wide = 0;
            for (int seed = 0; seed < 100; seed++) {
                SplittableRandom random = new SplittableRandom(seed);
                SignedCurve curve = SignedCurve.through(each.points().stream()
                        .map(point -> new ResponsePoint(
                                point.hz(),
                                point.level() + 0.01 * each.figures().get(3) * random.nextGaussian()))
                        .toList());
                double error = curve.zeroHz().value() - CENTRE_HZ - each.zeroKhz() * 1e3;
                zero += Math.abs(error) < 2 * curve.zeroHz().sigma() ? 1 : 0;
                wide += Math.abs(error) > 3e3 ? 1 : 0;
            }
            assertTrue(zero >= 82, each.key() + ": held for " + zero + " of 100");
            assertEquals(0, wide, each.key() + ": 3 kHz off or more");
        }
    }

    @Test
    void curvesThatHaveNoZeroAreTold() throws Refused {
        List<ResponsePoint> hump = IntStream.range(0, 20)
                .mapToObj(i -> new ResponsePoint(455e3 + i * 1e3, 1 / (1.0 + Math.abs(i - 10)) - 0.05))
                .toList();
        assertFalse(SignedCurve.hasBothSigns(hump));
        assertThrows(Refused.class, () -> SignedCurve.through(hump));
        List<ResponsePoint> few = List.of(new ResponsePoint(1e6, -1), new ResponsePoint(2e6, 1));
        assertThrows(Refused.class, () -> SignedCurve.through(few));
    }

    @Test
    void aSetThatIsWoundTheOtherWayHasTheSameZeroAndAFallingSlope() throws Refused {
        Case first = cases().get(0);
        SignedCurve turned = SignedCurve.through(first.points().stream()
                .map(point -> new ResponsePoint(point.hz(), -point.level()))
                .toList());
        SignedCurve curve = SignedCurve.through(first.points());
        assertEquals(curve.zeroHz().value(), turned.zeroHz().value(), 1);
        assertEquals(-curve.slopePerHz().value(), turned.slopePerHz().value(), 1e-9);
        assertEquals(curve.swing(50e3).bend().value(), turned.swing(50e3).bend().value(), 1e-6);
    }
}
