package org.slugpeak.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanTest {

    private static Stage stage(String... adjusters) {
        return new Stage("IF", Stream.of(adjusters).map(PlanTest::step).toList(), RepeatRule.USUAL);
    }

    private static PlanStep step(String adjuster) {
        return new PlanStep(
                adjuster, Goal.PEAK, SetupTest.NOTHING, false, Optional.empty(), Acceptance.MAXIMUM, List.of());
    }

    private static Plan plan(Stage... stages) {
        return new Plan("Tarnfield 54A", Chassis.LIVE, List.of(), List.of(), List.of(), List.of(stages), List.of());
    }

    @Test
    void countsTheAdjustersOfASingleRound() {
        assertEquals(3, plan(stage("T1 top", "T1 bottom"), stage("L9")).steps());
        assertEquals(
                1,
                plan(stage("T1 top", "T1 bottom"))
                        .withStages(List.of(stage("L9")))
                        .steps());
    }

    @Test
    void hasAStageAndAStageHasAStep() {
        assertThrows(IllegalArgumentException.class, PlanTest::plan);
        assertThrows(IllegalArgumentException.class, PlanTest::stage);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "-1, 1", "1, 1", "2, 1", "NaN, 1", "1, NaN"})
    void rangesAscendFromAboveZero(double low, double high) {
        assertThrows(IllegalArgumentException.class, () -> new Band("MW", low, high));
        assertThrows(IllegalArgumentException.class, () -> new LevelRange(low, high, "V"));
    }

    @Test
    void aRangeMayBeAsNarrowAsItLikes() {
        assertEquals(1 + 1e-9, new Band("MW", 1, 1 + 1e-9).highHz());
        assertEquals(1e-9, new LevelRange(1e-9, 1, "V").low());
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "-0.2, 6", "NaN, 6", "0.2, 0"})
    void aRoundHasALimitAboveZeroAndIsGoneThroughOnceAtLeast(double belowDb, int mostRounds) {
        assertThrows(IllegalArgumentException.class, () -> new RepeatRule(belowDb, mostRounds));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 6})
    void onceIsOneRound(int mostRounds) {
        assertEquals(mostRounds == 1, new RepeatRule(0.2, mostRounds).isOnce());
    }

    @ParameterizedTest
    @EnumSource(RoundVerdict.class)
    void aRoundGoesOnUntilItConvergesOrIsGivenUp(RoundVerdict verdict) {
        boolean ends =
                List.of(RoundVerdict.CONVERGED, RoundVerdict.STILL_GAINING).contains(verdict);
        assertEquals(ends, !verdict.goesOn());
    }

    @Test
    void theWordsOfPlanFilesAreThese() {
        assertEquals(
                List.of("transformer", "live", "unknown"),
                Stream.of(Chassis.values()).map(Chassis::code).toList());
        assertEquals(
                List.of("maximum", "skirts"),
                Stream.of(Acceptance.values()).map(Acceptance::code).toList());
    }

    @Test
    void highTensionIsTakenForPossibleWhereNothingIsSaid() {
        assertTrue(HighTension.POSSIBLE.atInjection() && HighTension.POSSIBLE.atMeter());
        assertFalse(new HighTension(false, true).atInjection());
    }
}
