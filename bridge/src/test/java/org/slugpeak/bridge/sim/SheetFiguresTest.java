package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Limit;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.rehearsal.PlannedSet;
import org.slugpeak.core.sheet.InputReach;

/** A few of the sheets that {@link SheetTable} fills by the hundred: the set knows the truth, and the sheet does not. */
class SheetFiguresTest {

    @Test
    void everyFigureIsAsTrueAndAsUncertainAsTheSheetSays() throws Exception {
        Plan plan = PlanFiles.load("tarnfield-54a", OptionalDouble.empty());
        List<SheetRun.Held> all = new ArrayList<>();
        for (long seed = 1; seed <= 2; seed++) {
            PlannedSet set = PlannedSet.of(plan, seed);
            SheetRun run = SheetRun.of(plan, seed == 1 ? set : set.inOrder(any -> true), seed);
            assertTrue(run.isOver());
            assertTrue(
                    run.figures().stream().allMatch(Figure::hasValue),
                    () -> run.figures().toString());
            all.addAll(run.held());
        }
        Set<FigureKind> kinds = all.stream().map(it -> it.figure().kind()).collect(Collectors.toSet());
        assertEquals(EnumSet.complementOf(EnumSet.of(FigureKind.DISTORTION)), kinds, "a meter hears no harmonics");
        all.forEach(it -> assertTrue(SheetTable.isMet(it, ErringAttenuator.TRUE), it::toString));
        all.forEach(it -> assertTrue(Math.abs(it.pull()) < 5, it::toString));
    }

    @Test
    void anAttenuatorThatErrsPutsNoFigureFurtherOffThanTheSheetSays() throws Exception {
        Plan plan = PlanFiles.load("larkmoor-6c", OptionalDouble.empty());
        ErringAttenuator attenuator = new ErringAttenuator(301, 1, 0.1);
        SheetRun run = SheetRun.of(plan, PlannedSet.of(plan, 301), 301, attenuator);
        assertTrue(run.isOver());
        assertTrue(run.held().stream().anyMatch(it -> Math.abs(it.off()) > 0.5), "it errs");
        run.held().forEach(it -> assertTrue(SheetTable.isMet(it, attenuator), it::toString));
        run.held().forEach(it -> assertTrue(Math.abs(it.pull()) < 5, it::toString));
    }

    /** Two marks, each known to 150 Hz: the width between them is known to 212 Hz, and so the sheet says. */
    @Test
    void aWidthIsAsUncertainAsTheMarksOfTheDial() throws Exception {
        Plan plan = PlanFiles.load("tarnfield-54a", OptionalDouble.empty());
        List<SheetRun.Held> widths = new ArrayList<>();
        for (long seed = 401; seed <= 404; seed++) {
            PlannedSet set = PlannedSet.of(plan, seed).inOrder(any -> true);
            ErringDial dial = new ErringDial(seed, 150);
            SheetRun run = SheetRun.of(plan, set, seed, dial, InputReach.BY_HAND.marked(Optional.of(dial.scale())));
            run.held().stream()
                    .filter(it -> FigureKind.WIDTHS.contains(it.figure().kind()))
                    .forEach(widths::add);
        }
        assertTrue(widths.size() >= 12, "three widths a set");
        widths.forEach(it -> assertEquals(Limit.DIAL, it.figure().limit(), it::toString));
        widths.forEach(it -> assertTrue(it.figure().sigma() > 212, it::toString));
        widths.forEach(it -> assertTrue(Math.abs(it.pull()) < 4, it::toString));
        assertTrue(widths.stream().anyMatch(it -> Math.abs(it.figure().value() - it.truth()) > 100), "it errs");
    }
}
