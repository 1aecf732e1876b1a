package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class AxisTest {

    @Test
    void marksAreRound() {
        assertEquals(List.of(-40.0, -30.0, -20.0, -10.0, 0.0), new Axis(-40, 0.5, 100, 0).marks(5));
        assertEquals(List.of(440.0, 445.0, 450.0, 455.0, 460.0), new Axis(440, 462, 0, 100).marks(5));
        assertEquals(List.of(0.0, 0.1, 0.2, 0.3), new Axis(0, 0.3, 0, 100).marks(3));
    }

    @Test
    void anyRangeHasAFewMarksWithinIt() {
        SplittableRandom random = new SplittableRandom(3);
        for (int round = 0; round < 500; round++) {
            double from = random.nextDouble(-1e3, 1e3);
            double to = from + Math.pow(10, random.nextDouble(-3, 6));
            List<Double> marks = new Axis(from, to, 0, 1).marks(6);
            assertTrue(marks.size() >= 2 && marks.size() <= 14, marks::toString);
            double slack = (to - from) * 1e-6;
            assertTrue(marks.get(0) >= from - slack && marks.get(marks.size() - 1) <= to + slack);
        }
    }

    @Test
    void placesGrowWithValues() {
        Axis axis = new Axis(10, 20, 100, 300);
        assertEquals(100, axis.pixel(10));
        assertEquals(200, axis.pixel(15));
        assertEquals(300, axis.pixel(20));
    }
}
