package org.slugpeak.core.peak.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.reading.Reading;

class TraceTest {

    private static final Meter PLAIN = Meter.of(10);

    private static Trace of(Shape shape, double seconds, Meter meter) {
        return new Trace(List.of(new Piece(shape, seconds, meter)));
    }

    private static List<Double> values(Trace trace) {
        return trace.readings().stream().map(Reading::value).toList();
    }

    private static List<Long> millis(Trace trace) {
        return trace.readings().stream().map(r -> r.tNanos() / 1_000_000).toList();
    }

    @Test
    void aPieceReadsItsLevelAtItsRate() {
        assertEquals(List.of(0.25, 0.5, 0.75, 1.0), values(of(new Shape.Ramp(0, 1), 0.4, PLAIN)));
        assertEquals(List.of(100L, 200L, 300L, 400L), millis(of(new Shape.Ramp(0, 1), 0.4, PLAIN)));
        assertEquals(List.of(2.0, 2.0, 1.0, 1.0), values(of(new Shape.Step(2, 1), 0.4, PLAIN)));
        assertEquals(List.of(1.0, 1.0, 9.0, 1.0), values(of(new Shape.Spike(1, 9), 0.4, PLAIN)));
        assertEquals(
                Math.pow(10, 0.1), values(of(new Shape.Drift(1, 2), 3, PLAIN)).get(29), 1e-12);
        assertEquals(
                Math.sqrt(0.5), values(of(new Shape.Top(1, 0, 1), 1, PLAIN)).get(9), 1e-12);
    }

    @Test
    void aGapIsTimeWithoutReadings() {
        Trace rest = of(new Shape.Rest(1), 0.2, PLAIN);
        Trace broken = rest.then(new Piece(new Shape.Gap(), 5, PLAIN))
                .then(rest.pieces().get(0));
        assertEquals(List.of(100L, 200L, 5300L, 5400L), millis(broken));
        assertEquals(5.4, broken.seconds(), 1e-12);
    }

    @Test
    void aRunIsExactWhateverTheMeter() {
        Meter noisy = new Meter(10, 0.1, 0.01, new Stamps.Exact());
        assertEquals(List.of(0.123, 0.123), values(of(new Shape.Run(0.123), 0.2, noisy)));
    }

    @Test
    void aMetersNoiseHasItsSigmaAndItsDigitIsKept() {
        List<Double> noisy = values(of(new Shape.Rest(1), 200, Meter.of(50).withNoise(0.02)));
        double square =
                noisy.stream().mapToDouble(v -> (v - 1) * (v - 1)).average().orElseThrow();
        assertEquals(0.02, Math.sqrt(square), 0.001);
        for (double value : values(of(new Shape.Rest(1), 2, new Meter(50, 0.02, 0.01, new Stamps.Exact())))) {
            assertEquals(Math.rint(value * 100), value * 100, 1e-9);
        }
    }

    @Test
    void transportsMoveStampsOnly() {
        Trace rest = of(new Shape.Rest(1), 0.5, PLAIN);
        assertEquals(List.of(200L, 200L, 400L, 400L, 500L), over(rest, new Stamps.Packets(2, 0)));
        assertEquals(List.of(199L, 200L, 399L, 400L, 500L), over(rest, new Stamps.Packets(2, 1_000_000)));
        assertEquals(List.of(0L, 200L, 200L, 400L, 400L), over(rest, new Stamps.Coarse(0.2)));
    }

    private static List<Long> over(Trace trace, Stamps stamps) {
        return stamps.stamp(trace.readings()).stream()
                .map(r -> r.tNanos() / 1_000_000)
                .toList();
    }

    @Test
    void aStreamIsWrittenInWords() {
        Meter meter = new Meter(50, 0.01, 0.001, new Stamps.Packets(5, 0));
        Trace trace = of(new Shape.Top(1, -3, 2.5), 4, meter)
                .then(new Piece(new Shape.Run(0), 1, PLAIN))
                .then(new Piece(new Shape.Gap(), 1.5, PLAIN));
        assertEquals(
                "top 1 V from -3 to 2.5 half-widths, 4 s at 50/s, noise 0.01 V, digit 0.001 V, packets of 5; "
                        + "zeros, 1 s at 10/s; gap, 1.5 s",
                trace.toString());
    }

    @Test
    void aWalkKnowsItsTurns() {
        List<Walk.Leg> legs = List.of(new Walk.Leg(0, 1, 1), new Walk.Leg(2, 1, 1), new Walk.Leg(-1, 1, 1));
        Walk walk = new Walk(1, -3, legs, PLAIN);
        assertEquals(2, walk.turns());
        assertEquals(List.of(2.0, 4 + 2.0 / 3), walk.maxima());
        assertEquals(60, walk.trace().readings().size());
        assertEquals(1, values(walk.trace()).get(9), 1e-12);
    }

    @Law
    void everyStreamRepeatsAndKeepsItsReadingsOverAnyTransport(@ForAll("any") Trace trace) {
        List<Reading> readings = trace.readings();
        assertEquals(readings, trace.readings());
        assertEquals(values(trace), values(trace.exactlyStamped()));
        assertEquals(trace.pieces().stream().mapToInt(Piece::count).sum(), readings.size());
        assertTrue(trace.toString().length() > 4);
    }

    @Provide
    Arbitrary<Trace> any() {
        return Traces.any();
    }
}
