package org.slugpeak.bridge.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Says how a text was understood, so that a user can see whether that is right. Stateless. */
final class Understanding {

    private static final int ROWS_SHOWN = 3;

    private Understanding() {}

    static List<String> lines(NumberTable table, Columns columns) {
        List<String> lines = new ArrayList<>();
        lines.add(line(
                "separator",
                (columns.count() == 1
                                ? "none, one column"
                                : table.shape().separator().words()) + "; decimal "
                        + (table.shape().point() == ',' ? "commas" : "points")));
        lines.add(line("columns", named(columns)));
        lines.add(line("times", columns.time().map(TimeColumn::words).orElse("none: an even rate")));
        lines.add(line("unit", unit(columns)));
        TextLayout layout = TextLayout.of(table, columns);
        Row row = new Row(layout);
        table.lines().stream()
                .limit(ROWS_SHOWN)
                .forEach(each -> lines.add(line("line " + each.number(), read(each, row, layout))));
        return lines;
    }

    private static String named(Columns columns) {
        String time =
                columns.time().map(it -> ", time " + name(columns, it.index())).orElse("");
        String others = IntStream.range(0, columns.count())
                .filter(each -> each != columns.value()
                        && columns.time()
                                .filter(it ->
                                        it.index() == each || it.dateIndex().orElse(-1) == each)
                                .isEmpty())
                .mapToObj(each -> name(columns, each))
                .collect(Collectors.joining(", "));
        return "reading " + name(columns, columns.value()) + time + (others.isEmpty() ? "" : "; not used " + others);
    }

    private static String name(Columns columns, int index) {
        boolean named = index < columns.names().size();
        return (index + 1) + (named ? " '" + Excerpt.of(columns.names().get(index)) + "'" : "");
    }

    private static String unit(Columns columns) {
        String unit = columns.measurand().unit();
        String shown = unit.isEmpty() ? columns.fromDecibels() ? "ratios" : "none told: --unit says it" : unit;
        return columns.fromDecibels() ? shown + ", turned from decibels" : shown;
    }

    private static String read(SampleLine line, Row row, TextLayout layout) {
        String text = "'" + Excerpt.of(line.text()) + "' ";
        String problem = row.read(line.bytes(), 0, line.bytes().length);
        if (!problem.isEmpty()) {
            return text + "cannot be read: " + problem;
        }
        String value = row.condition().hasValue()
                ? (row.value() + " " + layout.columns().measurand().unit()).strip()
                : row.condition().code();
        return text + "is " + value
                + (layout.columns().time().isPresent()
                        ? String.format(Locale.ROOT, " at %.6f s", row.nanos() / 1e9)
                        : "");
    }

    private static String line(String name, String value) {
        return String.format(Locale.ROOT, "%-17s %s", name, value);
    }
}
