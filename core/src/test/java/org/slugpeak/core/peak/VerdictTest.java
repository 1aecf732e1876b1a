package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.slugpeak.core.peak.grammar.Law;
import org.slugpeak.core.peak.grammar.Meter;
import org.slugpeak.core.peak.grammar.Trace;
import org.slugpeak.core.peak.grammar.Traces;
import org.slugpeak.core.peak.grammar.Walk;

/** What every verdict needs in order to be told. */
class VerdictTest {

    /** A return may miss so much and two sigma. */
    private static final double RETURN_MISSES_DB = 0.15;
    /** A reading settles whether the hand is back when it has been looked at for so long. */
    private static final double LOOKED_AT_SECONDS = 0.35;

    @Provide
    Arbitrary<Trace> traces() {
        return Arbitraries.oneOf(Traces.plausible(), Walk.any().map(Walk::trace));
    }

    @Provide
    Arbitrary<Walk> walks() {
        return Walk.any();
    }

    @Law
    void aWrongWayIsNeverToldWhileTheReadingRises(@ForAll("traces") Trace trace) {
        for (Heard.Said said : Heard.of(Seek.PEAK, trace.readings()).of("wrong-way")) {
            assertNotEquals(Trend.RISING, said.trend(), said.toString());
        }
    }

    @Law
    void aReturnMissesLittle(@ForAll("walks") Walk walk) {
        Meter meter = walk.meter();
        double ofMean = meter.noise() / Math.sqrt(Math.max(1, meter.perSecond() * LOOKED_AT_SECONDS));
        for (Heard.Said said : Heard.of(Seek.PEAK, walk.trace().readings()).of("returned")) {
            double sigma = Math.hypot(ofMean, said.bestSigma());
            double allowed = RETURN_MISSES_DB - 20 * Math.log10(Math.max(0.1, 1 - 2 * sigma / said.best()));
            assertTrue(said.word().db() <= allowed, said + " but no more than " + allowed + " dB may be missing");
        }
    }

    @Law
    void aWrongWayIsToldAtMostOnceForEachTurnOfTheHand(@ForAll("walks") Walk walk) {
        int told = Heard.of(Seek.PEAK, walk.trace().readings()).of("wrong-way").size();
        assertTrue(told <= walk.turns(), told + " times");
    }

    @Law
    void aPassIsToldAtMostOnceForEachMaximum(@ForAll("walks") Walk walk) {
        int told = Heard.of(Seek.PEAK, walk.trace().readings()).of("passed").size();
        assertTrue(told <= walk.maxima().size(), told + " times");
    }

    @Law
    void aPassIsToldOnlyAfterARise(@ForAll("walks") Walk walk) {
        for (Heard.Said said : Heard.of(Seek.PEAK, walk.trace().readings()).of("passed")) {
            double seconds = said.word().tNanos() / 1e9;
            assertTrue(walk.maxima().stream().anyMatch(m -> m < seconds), said.toString());
        }
    }
}
