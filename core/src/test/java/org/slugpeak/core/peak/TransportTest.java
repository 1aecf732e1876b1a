package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.slugpeak.core.peak.grammar.Law;
import org.slugpeak.core.peak.grammar.Stamps;
import org.slugpeak.core.peak.grammar.Traces;
import org.slugpeak.core.peak.grammar.Walk;
import org.slugpeak.core.reading.Reading;

/** A transport may hold a verdict up, but neither take it away nor change it. */
class TransportTest {

    private static final double TENTH_SECONDS = 0.1;

    @Provide
    Arbitrary<Walk> crossings() {
        return Walk.crossings(3);
    }

    @Provide
    Arbitrary<Stamps> packets() {
        return Traces.packets(0);
    }

    @Law
    void packetsHoldVerdictsUpByOnePacketAtMost(@ForAll("crossings") Walk walk, @ForAll("packets") Stamps packets) {
        assertHeldUp(walk, packets, ((Stamps.Packets) packets).readings());
    }

    @Law
    void stampsToATenthOfASecondHoldVerdictsUpByOneStampAtMost(@ForAll("crossings") Walk walk) {
        double perSecond = walk.meter().perSecond();
        assertHeldUp(walk, new Stamps.Coarse(TENTH_SECONDS), (int) Math.ceil(TENTH_SECONDS * perSecond));
    }

    private static void assertHeldUp(Walk walk, Stamps stamps, int readings) {
        List<Reading> exact = walk.trace().readings();
        List<Heard.Said> expected = Heard.of(Seek.PEAK, exact).verdicts();
        List<Heard.Said> actual = Heard.of(Seek.PEAK, stamps.stamp(exact)).verdicts();
        assertEquals(words(expected), words(actual));
        for (int i = 0; i < expected.size(); i++) {
            int later = actual.get(i).index() - expected.get(i).index();
            assertTrue(later <= readings, expected.get(i).text() + " comes " + later + " readings later");
        }
    }

    private static List<String> words(List<Heard.Said> verdicts) {
        return verdicts.stream().map(Heard.Said::text).toList();
    }
}
