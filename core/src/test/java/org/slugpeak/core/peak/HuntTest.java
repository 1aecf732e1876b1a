package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.peak.HuntGoal.Seen;
import org.slugpeak.core.peak.HuntGoal.Stay;

/** The order of things, with a goal that sees what it is told to see. A block takes 20 ms. */
class HuntTest {

    private static final int REACTION_BLOCKS = 15;

    private final Blocks blocks = new Blocks();
    private final ScriptedGoal goal = new ScriptedGoal();
    private final Sight sight = new Sight(blocks.front);
    private final Hunt hunt = new Hunt(sight, goal);

    private void blocks(int count, Seen seen) {
        goal.seen = seen;
        blocks.add(count, i -> 1, () -> hunt.block(blocks.nowNanos()));
        goal.seen = Seen.NOTHING;
    }

    private void block(Seen seen) {
        blocks(1, seen);
    }

    @BeforeEach
    void theNoiseIsKnown() {
        blocks(10, Seen.NOTHING);
        goal.asked.clear();
    }

    private void passed() {
        block(Seen.AWAY);
        blocks(REACTION_BLOCKS, Seen.NOTHING);
    }

    private void returned() {
        passed();
        goal.isBack = true;
        block(Seen.NOTHING);
        goal.isBack = false;
    }

    private void held() {
        returned();
        goal.stay = Stay.HELD;
        block(Seen.NOTHING);
        goal.stay = Stay.WAITS;
    }

    private void assertSearches() {
        block(Seen.NOTHING);
        assertEquals("search", goal.last());
    }

    private void assertIsPast() {
        block(Seen.NOTHING);
        assertEquals("past", goal.last());
    }

    @Test
    void nothingIsLookedForBeforeTheNoiseIsKnown() {
        Blocks fresh = new Blocks();
        Hunt young = new Hunt(new Sight(fresh.front), goal);
        fresh.add(3, i -> 1, () -> young.block(fresh.nowNanos()));
        assertEquals(List.of(), goal.asked);
        fresh.add(1, i -> 1, () -> young.block(fresh.nowNanos()));
        assertEquals(List.of("search"), goal.asked);
    }

    @Test
    void aPassAReturnAndADwellFollowOneAnother() {
        held();
        List<String> words = goal.asked.stream().filter(s -> !s.equals("past")).toList();
        assertEquals(List.of("passes", "returned", "stay", "held"), words);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void withoutASignalNoStageGoesOn(int stage) {
        List<Runnable> stages = List.of(() -> {}, this::passed, this::returned, this::held);
        stages.get(stage).run();
        goal.asked.clear();
        goal.isBeyond = true;
        goal.isBack = true;
        blocks(50, Seen.NO_SIGNAL);
        assertEquals(List.of(), goal.asked);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void whatIsLostIsSearchedForAgain(int stage) {
        List<Runnable> stages = List.of(() -> {}, this::passed, this::returned, this::held);
        stages.get(stage).run();
        block(Seen.LOST);
        assertEquals("search", goal.last());
        assertSearches();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void whereTheLevelGoesBeyondTheBestItIsSearchedForAgain(int stage) {
        List<Runnable> stages = List.of(() -> {}, this::passed, this::returned, this::held);
        stages.get(stage).run();
        goal.isBeyond = true;
        block(Seen.NOTHING);
        assertSearches();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 2, 3})
    void aLevelThatGoesAwayIsPassed(int stage) {
        List<Runnable> stages = List.of(() -> {}, this::passed, this::returned, this::held);
        stages.get(stage).run();
        goal.asked.clear();
        block(Seen.AWAY);
        assertEquals(List.of("passes", "past"), goal.asked);
        assertIsPast();
    }

    @Nested
    class WhileSearching {

        @Test
        void aPassThatIsNoneLeavesItSearching() {
            goal.isPass = false;
            block(Seen.AWAY);
            assertEquals(List.of("passes", "search"), goal.asked);
            assertSearches();
        }

        @Test
        void anInterruptionMeansNothing() {
            hunt.interrupted();
            assertEquals(List.of(), goal.asked);
        }

        @Test
        void aRiseIsWhatIsExpected() {
            block(Seen.TOWARDS);
            assertEquals(List.of("search"), goal.asked);
        }
    }

    @Nested
    class AfterAPass {

        /** Nobody turns round within a third of a second. */
        @Test
        void noReturnIsToldSoonerThanAHandCanTurn() {
            block(Seen.AWAY);
            goal.isBack = true;
            blocks(REACTION_BLOCKS - 1, Seen.NOTHING);
            assertEquals("past", goal.last());
            block(Seen.NOTHING);
            assertEquals("returned", goal.last());
        }

        @Test
        void aRiseSoonerThanAHandCanTurnTakesItBack() {
            block(Seen.AWAY);
            blocks(REACTION_BLOCKS - 2, Seen.NOTHING);
            goal.asked.clear();
            block(Seen.TOWARDS);
            assertEquals(List.of("takeBack", "search"), goal.asked);
            assertSearches();
        }

        @Test
        void aLaterRiseIsTheHand() {
            passed();
            goal.asked.clear();
            block(Seen.TOWARDS);
            assertEquals(List.of("past"), goal.asked);
            assertIsPast();
        }

        @Test
        void anotherPassGivesTheHandItsTimeAgain() {
            passed();
            block(Seen.AWAY);
            assertEquals(1, goal.asked.stream().filter("passes again"::equals).count());
            goal.asked.clear();
            block(Seen.TOWARDS);
            assertEquals(List.of("takeBack", "search"), goal.asked);
        }

        @Test
        void aFallThatIsNoOtherPassGivesItNone() {
            passed();
            goal.isPass = false;
            block(Seen.AWAY);
            block(Seen.TOWARDS);
            assertEquals("past", goal.last());
            assertIsPast();
        }

        @Test
        void theGoalIsToldOfAnInterruption() {
            passed();
            hunt.interrupted();
            assertEquals("interrupted", goal.last());
        }
    }

    @Nested
    class BackAtIt {

        @Test
        void theStayBeginsWithTheReturn() {
            returned();
            long since = blocks.nowNanos();
            blocks(20, Seen.NOTHING);
            assertEquals("stay", goal.last());
            assertEquals(since, goal.staysSince);
        }

        @Test
        void afterAGapItBeginsAgain() {
            returned();
            blocks(20, Seen.NOTHING);
            hunt.gap();
            block(Seen.NOTHING);
            long since = blocks.nowNanos();
            blocks(5, Seen.NOTHING);
            assertEquals(since, goal.staysSince);
        }

        @Test
        void anOldGapLeavesAnotherStayAlone() {
            returned();
            hunt.gap();
            block(Seen.AWAY);
            blocks(REACTION_BLOCKS, Seen.NOTHING);
            goal.isBack = true;
            block(Seen.NOTHING);
            long since = blocks.nowNanos();
            block(Seen.NOTHING);
            assertEquals(since, goal.staysSince);
        }

        @Test
        void whoStoppedShortIsPastItAgain() {
            returned();
            goal.stay = Stay.SHORT;
            block(Seen.NOTHING);
            assertEquals("stay", goal.last());
            assertIsPast();
        }
    }

    @Test
    void gapsAndJumpsAreToldToTheGoal() {
        hunt.gap();
        hunt.jump(7, 0.5);
        assertEquals(List.of("gap", "jump from 0.5"), goal.asked);
    }

    @Test
    void theSightSeesEveryBlockAndForgetsWithTheHunt() {
        blocks.add(50, i -> 1 - 0.01 * i, () -> hunt.block(blocks.nowNanos()));
        assertEquals(0.51, sight.level.value(), 0.01);
        assertEquals(-0.5, sight.slope.perSecond(), 1e-6);
        hunt.gap();
        assertEquals(0, sight.slope.perSecond());
        assertEquals(0.51, sight.level.value(), 0.01);
        hunt.restart();
        assertEquals(Double.NaN, sight.level.value());
    }

    @Test
    void aRestartForgetsTheStage() {
        returned();
        hunt.restart();
        assertEquals("restart", goal.last());
        assertSearches();
    }
}
