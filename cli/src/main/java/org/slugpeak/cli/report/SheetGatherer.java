package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.session.SheetWork;

/** Gathers the sheets of a log. One thread at a time. */
final class SheetGatherer implements SheetWork.Matcher<Runnable> {

    private final List<SheetStory> done = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();
    private final List<SheetWork.OutputTaken> outputs = new ArrayList<>();
    private Optional<Conditions> conditions = Optional.empty();

    void take(SheetWork it) {
        it.match(this).run();
    }

    /** All so far, the one at hand too; what came before a beginning belongs to none. */
    List<SheetStory> sheets() {
        List<SheetStory> all = new ArrayList<>(done);
        conditions.ifPresent(it -> all.add(new SheetStory(it, figures, outputs)));
        return all;
    }

    @Override
    public Runnable begun(SheetWork.Begun it) {
        return () -> {
            List<SheetStory> before = sheets();
            done.clear();
            done.addAll(before);
            figures.clear();
            outputs.clear();
            conditions = Optional.of(it.conditions());
        };
    }

    @Override
    public Runnable outputTaken(SheetWork.OutputTaken it) {
        return () -> outputs.add(it);
    }

    @Override
    public Runnable figureTaken(SheetWork.FigureTaken it) {
        return () -> figures.add(it.figure());
    }

    @Override
    public Runnable sheetOver(SheetWork.SheetOver it) {
        return () -> {};
    }
}
