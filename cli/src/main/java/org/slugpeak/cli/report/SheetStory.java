package org.slugpeak.cli.report;

import java.util.List;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.session.SheetWork;

/**
 * A receiver's sheet as a log has it. Immutable; any thread may use it.
 *
 * @param conditions what it was measured under
 * @param figures in the order in which they were taken
 * @param outputs the readings behind them
 */
public record SheetStory(Conditions conditions, List<Figure> figures, List<SheetWork.OutputTaken> outputs) {

    public SheetStory {
        figures = List.copyOf(figures);
        outputs = List.copyOf(outputs);
    }
}
