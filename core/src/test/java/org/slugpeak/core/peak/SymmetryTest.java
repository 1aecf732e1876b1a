package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.slugpeak.core.peak.grammar.Law;
import org.slugpeak.core.peak.grammar.Trace;
import org.slugpeak.core.peak.grammar.Walk;
import org.slugpeak.core.reading.Reading;

/** What the unit of the readings, the origin of time and the sense of the leads must not change. */
class SymmetryTest {

    /** Part of the best by which rounding may change it. */
    private static final double ROUNDING = 1e-9;

    /** Part of the best, 0.1 dB, by which a top may differ from its mirror image: thresholds are parts of the level, which is another there. */
    private static final double SAME = 0.012;

    private static List<Reading> values(Trace trace, DoubleUnaryOperator change) {
        return trace.readings().stream()
                .map(r -> Reading.of(r.tNanos(), change.applyAsDouble(r.value())))
                .toList();
    }

    @Law
    void anyOtherFactorScalesTheBestToRounding(@ForAll("walks") Walk walk, @ForAll("factors") double factor) {
        Heard plain = Heard.of(Seek.PEAK, walk.trace().readings());
        Heard scaled = Heard.of(Seek.PEAK, values(walk.trace(), v -> v * factor));
        assertEquals(plain.told.words(), scaled.told.words());
        assertEquals(plain.finder.best(), scaled.finder.best() / factor, ROUNDING * plain.finder.best());
    }

    @Provide
    Arbitrary<Walk> walks() {
        return Walk.any();
    }

    @Provide
    Arbitrary<Double> factors() {
        return Arbitraries.of(3.0, 0.1, 1e-6, 7.3e9);
    }

    /** Turned over at twice its height, a peak is a dip whose bottom is where the peak's top was. */
    @Law
    void aDipIsAPeakTurnedOver(@ForAll("crossings") Walk walk) {
        Heard peak = Heard.of(Seek.PEAK, walk.trace().readings());
        Heard dip = Heard.of(Seek.DIP, values(walk.trace(), v -> 2 * walk.height() - v));
        assertEquals(peak.told.count("passed"), dip.told.count("passed"));
        double same = 4 * peak.finder.bestSigma() + SAME * walk.height();
        assertEquals(peak.finder.best(), 2 * walk.height() - dip.finder.best(), same);
    }

    @Provide
    Arbitrary<Walk> crossings() {
        return Walk.crossings(1);
    }
}
