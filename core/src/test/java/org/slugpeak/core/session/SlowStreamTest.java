package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Whoever reads a meter by eye types a value in a second at best; nobody is told of that twice. */
class SlowStreamTest {

    private static List<Double> told(long... intervalsMillis) {
        SlowStream stream = new SlowStream();
        List<Double> told = new ArrayList<>();
        long tNanos = 0;
        stream.see(tNanos).ifPresent(told::add);
        for (long millis : intervalsMillis) {
            tNanos += millis * 1_000_000;
            stream.see(tNanos).ifPresent(told::add);
        }
        return told;
    }

    @Test
    void isToldFromNineTenthsOfASecondOn() {
        assertEquals(List.of(0.9), told(900, 900, 900, 900, 900));
        assertEquals(List.of(), told(899, 899, 899, 899, 899));
    }

    @Test
    void twoPausesOfFiveMakeAQuickStreamNoSlowOneInAnyOrder() {
        assertEquals(List.of(), told(5000, 100, 100, 100, 5000));
        assertEquals(List.of(), told(100, 5000, 5000, 100, 100));
        assertEquals(List.of(2.0), told(100, 2000, 5000, 100, 5000));
    }

    @Test
    void isToldOnceAtTheSixthReading() {
        assertEquals(List.of(), told(1000, 1000, 1000, 1000));
        assertEquals(
                List.of(1.0), told(LongStream.generate(() -> 1000).limit(40).toArray()));
    }
}
