package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class TraceTest {

    @Test
    void aShortCourseKeepsEveryLevel() {
        Trace trace = new Trace();
        for (int i = 0; i < 1000; i++) {
            trace.add(i * 20_000_000L, i);
        }
        assertEquals(1000, trace.stretches().size());
        assertEquals(new Trace.Stretch(20_000_000L, 1, 1), trace.stretches().get(1));
    }

    /** A day at fifty a second: what is kept is bounded, in order, and no spike is lost. */
    @Test
    void aDayIsThinnedAndLosesNoSpike() {
        Trace trace = new Trace();
        for (int i = 0; i < 4_320_000; i++) {
            trace.add(i * 20_000_000L, i == 1_234_567 ? 99 : i == 3_210_000 ? -99 : 0);
        }
        assertTrue(trace.stretches().size() <= Trace.MOST_STRETCHES);
        assertTrue(trace.stretches().size() > Trace.MOST_STRETCHES / 4, "fine enough for paper");
        assertEquals(
                99,
                trace.stretches().stream()
                        .mapToDouble(Trace.Stretch::most)
                        .max()
                        .orElse(0));
        assertEquals(
                -99,
                trace.stretches().stream()
                        .mapToDouble(Trace.Stretch::least)
                        .min()
                        .orElse(0));
        for (int i = 1; i < trace.stretches().size(); i++) {
            assertTrue(trace.stretches().get(i - 1).tNanos()
                    < trace.stretches().get(i).tNanos());
        }
    }

    @Test
    void timesThatRunBackInAHostileLogCostNoMemoryEither() {
        SplittableRandom random = new SplittableRandom(4);
        Trace trace = new Trace();
        for (int i = 0; i < 200_000; i++) {
            trace.add(random.nextLong() / 2, i);
        }
        assertTrue(trace.stretches().size() <= Trace.MOST_STRETCHES);
    }
}
