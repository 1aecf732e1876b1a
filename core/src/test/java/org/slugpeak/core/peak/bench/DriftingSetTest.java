package org.slugpeak.core.peak.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How fast a set may drift while it is aligned; the figures stand in docs/peak-finder.md. */
class DriftingSetTest {

    private static final long FIRST_SEED = 35_900_000;
    private static final int RUNS = 100;

    @ParameterizedTest
    @CsvSource({"0, 100, 100", "1, 95, 100", "1.5, 30, 65", "2, 0, 10"})
    void isHeldSoManyTimesInAHundred(double dbAMinute, int least, int most) {
        Family family =
                new Family("", Family.IF_SLUG, 40, 50, 0.0035, Family.Law.CLEAN.drift(dbAMinute), Family.Habit.PLAIN);
        long held = Table.runs(family, FIRST_SEED, RUNS, Watcher::finder).stream()
                .filter(run -> run.held() && run.lossDb() <= 0.5)
                .count();
        assertTrue(held >= least && held <= most, held + " of " + RUNS);
    }
}
