package org.slugpeak.core.peak.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A few runs of every family: the whole bench is a profile of its own. */
class BenchTest {

    private static final long FIRST_SEED = 7_000_000;
    private static final int SEEDS = 3;

    static List<Family> families() {
        return Families.all();
    }

    @ParameterizedTest
    @MethodSource("families")
    void aHandThatFollowsTheVerdictsEndsAtThePeak(Family family) {
        for (Run.Outcome outcome : Table.runs(family, FIRST_SEED, SEEDS, Watcher::finder)) {
            assertTrue(outcome.held(), family.name() + ": " + outcome);
            assertTrue(outcome.lossDb() <= 0.5, family.name() + ": " + outcome);
            assertEquals(0, outcome.falsePasses(), family.name() + ": " + outcome);
        }
    }
}
