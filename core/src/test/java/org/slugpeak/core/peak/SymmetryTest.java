package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.LongUnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.slugpeak.core.peak.grammar.Law;
import org.slugpeak.core.peak.grammar.Trace;
import org.slugpeak.core.peak.grammar.Traces;
import org.slugpeak.core.peak.grammar.Walk;
import org.slugpeak.core.reading.Reading;

/** What the unit of the readings, the origin of time and the sense of the leads must not change. */
class SymmetryTest {

    /** Part of the best by which rounding may change it. */
    private static final double ROUNDING = 1e-9;

    /** Part of the best, 0.1 dB, by which a top may differ from its mirror image: thresholds are parts of the level, which is another there. */
    private static final double SAME = 0.012;

    @Provide
    Arbitrary<Trace> traces() {
        return Arbitraries.oneOf(Traces.plausible(), Walk.any().map(Walk::trace));
    }

    private static List<Reading> values(Trace trace, DoubleUnaryOperator change) {
        return trace.readings().stream()
                .map(r -> Reading.of(r.tNanos(), change.applyAsDouble(r.value())))
                .toList();
    }

    private static List<Reading> times(Trace trace, LongUnaryOperator change) {
        return trace.readings().stream()
                .map(r -> Reading.of(change.applyAsLong(r.tNanos()), r.value()))
                .toList();
    }

    @Law
    void aPowerOfTwoScalesTheBestToTheLastBitAndChangesNoVerdict(
            @ForAll("traces") Trace trace, @ForAll Seek seek, @ForAll @IntRange(min = -400, max = 500) int power) {
        double factor = Math.scalb(1.0, power);
        Heard plain = Heard.of(seek, trace.readings());
        Heard scaled = Heard.of(seek, values(trace, v -> v * factor));
        assertEquals(plain.finder.best() * factor, scaled.finder.best());
        assertEquals(plain.finder.bestSigma() * factor, scaled.finder.bestSigma());
        assertEquals(plain.finder.smoothed() * factor, scaled.finder.smoothed());
        assertEquals(plain.told.words(), scaled.told.words());
        for (int i = 0; i < plain.told.all.size(); i++) {
            Told.Word expected = plain.told.all.get(i);
            Told.Word actual = scaled.told.all.get(i);
            assertEquals(expected.tNanos(), actual.tNanos());
            assertEquals(expected.atNanos(), actual.atNanos());
            assertEquals(expected.db(), actual.db());
        }
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

    @Law
    void theOriginOfTimeMeansNothing(
            @ForAll("traces") Trace trace, @ForAll Seek seek, @ForAll @From("origins") long startNanos) {
        Heard plain = Heard.of(seek, trace.readings());
        Heard shifted = Heard.of(seek, times(trace, t -> t + startNanos));
        assertEquals(plain.finder.best(), shifted.finder.best());
        assertEquals(plain.told.words(), shifted.told.words());
        for (int i = 0; i < plain.told.all.size(); i++) {
            assertEquals(
                    plain.told.all.get(i).tNanos() + startNanos,
                    shifted.told.all.get(i).tNanos());
        }
    }

    @Provide
    Arbitrary<Long> origins() {
        return Arbitraries.of(1L, -5_000_000_000L, 1L << 61, Long.MIN_VALUE);
    }

    @Law
    void theSignOfTheReadingsMeansNothing(@ForAll("traces") Trace trace, @ForAll Seek seek) {
        Heard plain = Heard.of(seek, trace.readings());
        Heard turned = Heard.of(seek, values(trace, v -> -v));
        // Added to 0, a zero has no sign.
        assertEquals(0 - plain.finder.smoothed(), 0 + turned.finder.smoothed());
        assertEquals(Math.abs(plain.finder.best()), Math.abs(turned.finder.best()));
        assertEquals(withoutSign(plain), withoutSign(turned));
    }

    private static List<String> withoutSign(Heard heard) {
        return heard.told.words().stream()
                .filter(word -> !word.equals(Hint.NEGATIVE_GOING.code()))
                .toList();
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
