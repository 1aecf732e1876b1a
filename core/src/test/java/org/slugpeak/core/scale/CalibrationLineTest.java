package org.slugpeak.core.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class CalibrationLineTest {

    /** Guide to the expression of uncertainty in measurement, JCGM 100:2008, annex H.3: calibration of a thermometer. */
    @Test
    void exampleOfTheGuideToUncertainty() {
        double[] celsius = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511};
        double[] correction = {-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160};
        double[] from20 = Arrays.stream(celsius).map(t -> t - 20).toArray();
        CalibrationLine line = CalibrationLine.fit(from20, correction);
        assertEquals(-0.17120379, line.offset(), 5e-9);
        assertEquals(0.0028776, line.offsetSigma(), 5e-8);
        assertEquals(0.0021827, line.slope(), 5e-8);
        assertEquals(0.00066794, line.slopeSigma(), 5e-9);
        assertEquals(0.00349756, line.scatter(), 5e-9);
        assertEquals(-0.14937681, line.at(10), 5e-9);
        assertEquals(0.00413860, line.sigmaAt(10), 5e-9);
    }

    @Test
    void correctionsOfADialOnePerCentHigh() {
        CalibrationLine line = CalibrationLine.ofCorrections(List.of(
                new KnownPoint(606e3, 600e3, 0), new KnownPoint(1010e3, 1000e3, 0), new KnownPoint(1414e3, 1400e3, 0)));
        assertEquals(-1 / 101.0, line.slope(), 1e-9);
        assertEquals(0, line.offset(), 1e-3);
        assertEquals(0, line.scatter(), 1e-3);
    }

    @Test
    void needsThreePoints() {
        assertThrows(IllegalArgumentException.class, () -> CalibrationLine.fit(new double[2], new double[2]));
    }
}
