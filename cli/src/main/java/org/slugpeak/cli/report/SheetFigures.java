package org.slugpeak.cli.report;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BinaryOperator;
import org.slugpeak.core.curve.Estimate;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;

/** The figures of a session's sheets that were measured, with the sigma that they state; bounds are left out. All methods are pure. */
final class SheetFigures {

    private static final double MICROVOLT = 1e-6;

    private SheetFigures() {}

    /** As the set was found: of what was measured more than once the first. */
    static Map<SheetTables.Row, Estimate> found(SessionStory story) {
        return of(story, (first, later) -> first);
    }

    /** As the set was left: of what was measured more than once the last. */
    static Map<SheetTables.Row, Estimate> left(SessionStory story) {
        return of(story, (first, later) -> later);
    }

    /** What the figures of a kind count in here: inputs in decibels, since their sigma is one. */
    static String unit(FigureKind kind) {
        return switch (kind.counts()) {
            case VOLTS_EMF -> "dB(uV)";
            case DECIBELS -> "dB";
            case HERTZ -> "kHz";
            case RATIO -> "%";
        };
    }

    private static Map<SheetTables.Row, Estimate> of(SessionStory story, BinaryOperator<Estimate> which) {
        Map<SheetTables.Row, Estimate> figures = new LinkedHashMap<>();
        story.sheets().stream()
                .flatMap(sheet -> sheet.figures().stream())
                .filter(figure -> figure.outcome() == Figure.Outcome.MEASURED)
                .forEach(figure ->
                        figures.merge(new SheetTables.Row(figure.kind(), figure.dialHz()), estimate(figure), which));
        return figures;
    }

    /** In the unit of its kind here. */
    static Estimate estimate(Figure it) {
        return switch (it.kind().counts()) {
            case VOLTS_EMF -> new Estimate(Decibels.of(it.value() / MICROVOLT), it.sigma());
            case DECIBELS -> new Estimate(it.value(), it.sigma());
            case HERTZ -> new Estimate(it.value(), it.sigma()).times(1e-3);
            case RATIO -> new Estimate(it.value(), it.sigma()).times(100);
        };
    }
}
