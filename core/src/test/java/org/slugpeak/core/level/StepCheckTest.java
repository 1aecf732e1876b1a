package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.level.StepCheck.Level;

/** At 50 readings a second. */
class StepCheckTest {

    private final List<Integer> asked = new ArrayList<>();
    private final List<Double> levels = new ArrayList<>();
    private boolean putBack = true;
    private boolean dropped;
    private int enough = Integer.MAX_VALUE;
    private long tNanos;

    private final StepCheck.Listener listener = new StepCheck.Listener() {

        @Override
        public void ask(long atNanos, int move) {
            asked.add(move);
        }

        @Override
        public boolean isEnough(List<Level> soFar) {
            return soFar.size() >= enough;
        }

        @Override
        public boolean measured(long atNanos, List<Level> measured) {
            measured.forEach(level -> levels.add(level.value()));
            return putBack;
        }

        @Override
        public void dropped(long atNanos, double waitedSeconds) {
            dropped = true;
        }
    };

    private void read(StepCheck check, double seconds, DoubleUnaryOperator level) {
        for (int i = 1; i <= Math.round(50 * seconds); i++) {
            tNanos += 20_000_000;
            check.accept(tNanos, level.applyAsDouble(i / 50.0));
        }
    }

    private void read(StepCheck check, double seconds, double level) {
        read(check, seconds, at -> level);
    }

    private StepCheck begun(CheckKind kind) {
        StepCheck check = new StepCheck(kind, listener);
        read(check, 0.6, 1);
        assertEquals(List.of(), asked, "the level before is not known yet");
        read(check, 0.3, 1);
        assertEquals(List.of(0), asked);
        return check;
    }

    @Test
    void aMoveThatShowsNeedsNoWordAndIsPutBack() {
        StepCheck check = begun(CheckKind.REST);
        read(check, 5, 1);
        read(check, 1.2, 0.5);
        assertEquals(List.of(), levels, "half a second to settle, 0.72 s to measure");
        read(check, 0.2, 0.5);
        assertEquals(List.of(1.0, 0.5), levels);
        assertEquals(List.of(0, CheckKind.REST.moves()), asked);
        read(check, 3, 0.5);
        assertFalse(check.isOver());
        read(check, 0.04, 1);
        assertTrue(check.isOver());
        assertFalse(dropped);
    }

    /** A step of 12 percent; it is back within six. */
    @ParameterizedTest
    @CsvSource({"0.89, 0", "0.87, 2", "1.11, 0", "1.13, 2"})
    void aSmallerChangeIsNoMove(double level, int known) {
        StepCheck check = begun(CheckKind.REST);
        read(check, 2, level);
        assertEquals(known, levels.size());
    }

    @ParameterizedTest
    @CsvSource({"0.93, false", "0.95, true", "1.05, true", "1.07, false"})
    void backIsWhereItWas(double level, boolean isOver) {
        StepCheck check = begun(CheckKind.REST);
        read(check, 3, 0.5);
        read(check, 1, level);
        assertEquals(isOver, check.isOver());
    }

    @Test
    void whatNeedNotBePutBackIsOver() {
        putBack = false;
        StepCheck check = begun(CheckKind.REST);
        read(check, 2, 0.5);
        assertTrue(check.isOver());
        assertEquals(1, asked.size());
    }

    @Test
    void twoMovesThatShowFollowOnEachOther() {
        StepCheck check = begun(CheckKind.LEVEL);
        read(check, 2, 0.5);
        assertEquals(List.of(0, 1), asked);
        read(check, 2, 0.25);
        assertEquals(List.of(1.0, 0.5, 0.25), levels);
        assertEquals(List.of(0, 1, 2), asked);
    }

    @Test
    void whereTheFirstMoveTellsAllNoSecondIsAskedFor() {
        enough = 2;
        StepCheck check = begun(CheckKind.LEVEL);
        read(check, 2, 0.5);
        assertEquals(List.of(1.0, 0.5), levels);
        assertEquals(List.of(0, 2), asked);
    }

    @Test
    void aMoveThatMayNotShowWaitsForTheWord() {
        StepCheck check = begun(CheckKind.SKIRTS);
        read(check, 5, 0.3);
        assertEquals(List.of(), levels);
        check.done(tNanos);
        read(check, 1.4, 0.3);
        assertEquals(List.of(0, 1), asked);
        check.done(tNanos);
        read(check, 1.4, 0.2);
        assertEquals(List.of(1.0, 0.3, 0.2), levels);
        read(check, 3, 1);
        assertFalse(check.isOver());
        check.done(tNanos);
        assertTrue(check.isOver());
    }

    @Test
    void aWordBeforeItIsAskedForMeansNothing() {
        StepCheck check = new StepCheck(CheckKind.SKIRTS, listener);
        check.done(0);
        read(check, 1, 1);
        assertEquals(1, asked.size());
        assertFalse(check.isOver());
    }

    @ParameterizedTest
    @CsvSource({"REST, 25", "SKIRTS, 25", "LOADING, 600"})
    void whoDoesNothingForLongIsNotWaitedFor(CheckKind kind, double seconds) {
        StepCheck check = begun(kind);
        read(check, seconds - 0.5, 1);
        assertFalse(dropped);
        read(check, 1, 1);
        assertTrue(dropped);
        assertTrue(check.isOver());
    }

    @Test
    void whoNeverPutsItBackIsNotWaitedForEither() {
        StepCheck check = begun(CheckKind.REST);
        read(check, 1.5, 0.5);
        read(check, 24.5, 0.5);
        assertFalse(check.isOver());
        read(check, 1, 0.5);
        assertTrue(check.isOver());
        assertFalse(dropped, "it has been measured");
    }

    /** While the level still moves nothing is measured; after four seconds it is taken as it is. */
    @Test
    void aLevelHasToStand() {
        StepCheck check = begun(CheckKind.REST);
        read(check, 3, at -> 0.8 - 0.1 * at);
        assertEquals(List.of(), levels);
        read(check, 1.5, 0.5);
        assertEquals(0.5, levels.get(1), 1e-9);

        StepCheck restless = new StepCheck(CheckKind.REST, listener);
        asked.clear();
        read(restless, 3.9, at -> 1 + 0.1 * at);
        assertEquals(List.of(), asked);
        read(restless, 0.3, at -> 1.39 + 0.1 * at);
        assertEquals(1, asked.size());
    }
}
