package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.slugpeak.cli.words.ReportPhrase;
import org.slugpeak.cli.words.SheetPhrase;
import org.slugpeak.cli.words.SheetWords;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.reading.Rounded;

/** Receivers' sheets of all sessions as tables, before beside after: mostly they are kept in logs of their own. All methods are pure. */
final class SheetTables {

    /** Which figure, at which setting of the dial, Hz. */
    record Row(FigureKind kind, double dialHz) {}

    private SheetTables() {}

    static List<SheetStory> sheets(List<SessionStory> stories) {
        return stories.stream().flatMap(story -> story.sheets().stream()).toList();
    }

    /** Both tables, or none where nothing was measured; of two jobs each has its own, since before and after the one are not those of the other. */
    static List<ReportTable> of(List<SessionStory> stories) {
        return Comparison.isAsked(stories)
                ? stories.stream()
                        .flatMap(story -> tables(story.sheets()).stream())
                        .toList()
                : tables(sheets(stories));
    }

    private static List<ReportTable> tables(List<SheetStory> sheets) {
        return Stream.of(figures(sheets), conditions(sheets))
                .filter(table -> !table.isEmpty())
                .toList();
    }

    private static ReportTable figures(List<SheetStory> sheets) {
        List<List<String>> rows = sheets.stream()
                .flatMap(sheet -> sheet.figures().stream())
                .map(figure -> new Row(figure.kind(), figure.dialHz()))
                .distinct()
                .sorted(Comparator.comparing(Row::kind).thenComparingDouble(Row::dialHz))
                .map(row -> row(row, last(sheets, row, Occasion.BEFORE), last(sheets, row, Occasion.AFTER)))
                .toList();
        return new ReportTable(
                SheetPhrase.TABLE.of(),
                List.of(
                        SheetPhrase.FIGURE_COLUMN.of(),
                        SheetPhrase.DIAL_COLUMN.of(),
                        ReportPhrase.BEFORE.of(),
                        ReportPhrase.AFTER.of(),
                        SheetPhrase.CHANGE.of(),
                        SheetPhrase.LIMIT.of()),
                rows);
    }

    /** Where it was measured more than once the last one counts. */
    private static Optional<Figure> last(List<SheetStory> sheets, Row row, Occasion occasion) {
        return sheets.stream()
                .filter(sheet -> sheet.conditions().occasion() == occasion)
                .flatMap(sheet -> sheet.figures().stream())
                .filter(figure -> figure.kind() == row.kind() && figure.dialHz() == row.dialHz())
                .reduce((earlier, later) -> later);
    }

    private static List<String> row(Row row, Optional<Figure> before, Optional<Figure> after) {
        return List.of(
                SheetWords.name(row.kind()),
                Numbers.kHz(row.dialHz()),
                before.map(SheetTables::cell).orElse(""),
                after.map(SheetTables::cell).orElse(""),
                before.flatMap(from -> after.flatMap(to -> change(from, to))).orElse(""),
                after.or(() -> before).map(SheetWords::limit).orElse(""));
    }

    private static String cell(Figure figure) {
        return SheetWords.value(figure) + SheetWords.spread(figure);
    }

    /** Empty where one of them is no more than a bound. */
    private static Optional<String> change(Figure before, Figure after) {
        if (before.outcome() != Figure.Outcome.MEASURED || after.outcome() != Figure.Outcome.MEASURED) {
            return Optional.empty();
        }
        Compared both = new Compared(
                Compared.Part.SHEET,
                "",
                "",
                SheetFigures.unit(before.kind()),
                Optional.of(SheetFigures.estimate(before)),
                Optional.of(SheetFigures.estimate(after)));
        double change = both.change().orElseThrow();
        String said = switch (before.kind().counts()) {
            case VOLTS_EMF, DECIBELS -> String.format(Locale.ROOT, "%+.1f dB", Rounded.to(change, 1));
            case HERTZ -> String.format(Locale.ROOT, "%+.2f kHz", Rounded.to(change, 2));
            case RATIO -> String.format(Locale.ROOT, "%+.1f %%", Rounded.to(change, 1));
        };
        return Optional.of(both.verdict() == Compared.Verdict.UNCHANGED ? SheetPhrase.UNCHANGED.of(said) : said);
    }

    private static ReportTable conditions(List<SheetStory> sheets) {
        List<List<String>> rows = new ArrayList<>();
        for (SheetStory sheet : sheets) {
            Conditions it = sheet.conditions();
            rows.add(List.of(SheetWords.occasion(it.occasion()), SheetWords.conditions(it), SheetWords.attenuator(it)));
        }
        return new ReportTable(
                SheetPhrase.HOW.of(),
                List.of(SheetPhrase.WHEN.of(), SheetPhrase.REFERENCE_COLUMN.of(), SheetPhrase.ATTENUATOR_COLUMN.of()),
                rows);
    }
}
