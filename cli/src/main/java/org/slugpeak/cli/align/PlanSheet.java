package org.slugpeak.cli.align;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.cli.display.Wrapped;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.progress.AlignmentProgress;

/** A plan on paper: what the person will meet, in rows of 80 columns. All methods are pure; any thread may call them. */
public final class PlanSheet {

    /** Every terminal and every printer has so many. */
    static final int COLUMNS = 80;

    /** By so much the rows of a thing stand in below its first. */
    private static final int HANGING = 2;

    private PlanSheet() {}

    /**
     * All that is said on the way through a plan.
     *
     * @param plan that is shown
     * @param progress at the beginning of the plan, with what it is to measure on the way; it is gone through
     * @return rows, none wider than 80 columns
     */
    public static List<String> rows(Plan plan, AlignmentProgress progress) {
        List<String> rows = new ArrayList<>();
        for (PlanWalk.Line line : PlanWalk.through(plan, progress)) {
            int indent = line.indent();
            if (line.text().isEmpty()) {
                rows.add("");
            }
            String words = line.text().replaceAll("\\s+", " ");
            for (String row : Wrapped.text(words, COLUMNS - indent - HANGING)) {
                rows.add(" ".repeat(indent) + row);
                indent = line.indent() + HANGING;
            }
        }
        return List.copyOf(rows);
    }
}
