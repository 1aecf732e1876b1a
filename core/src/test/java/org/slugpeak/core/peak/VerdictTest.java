package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.slugpeak.core.peak.grammar.Law;
import org.slugpeak.core.peak.grammar.Walk;

/** What every verdict needs in order to be told. */
class VerdictTest {

    @Provide
    Arbitrary<Walk> walks() {
        return Walk.any();
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
