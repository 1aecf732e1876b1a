package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.plan.PlanFiles;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.rehearsal.PlannedSet;

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
        assertEquals(EnumSet.allOf(FigureKind.class), kinds);
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
}
