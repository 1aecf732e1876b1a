package org.slugpeak.bridge.file;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.slugpeak.bridge.source.Understanding;

/** Tells how a table and its columns were understood. Stateless. */
final class Understood {

    private static final int ROWS_SHOWN = 3;

    private Understood() {}

    static Understanding of(NumberTable table, Columns columns) {
        return new Understanding(
                columns.count() == 1
                        ? Understanding.Separation.NONE
                        : table.shape().separator().told(),
                table.shape().point() == ',',
                column(columns, columns.value()),
                columns.time().map(it -> column(columns, it.index())),
                unused(columns),
                columns.time().map(TimeColumn::told).orElse(Understanding.Times.NONE),
                columns.measurand().unit(),
                columns.fromDecibels(),
                lines(table, TextLayout.of(table, columns)));
    }

    private static List<Understanding.Column> unused(Columns columns) {
        return IntStream.range(0, columns.count())
                .filter(each -> each != columns.value()
                        && columns.time()
                                .filter(it ->
                                        it.index() == each || it.dateIndex().orElse(-1) == each)
                                .isEmpty())
                .mapToObj(each -> column(columns, each))
                .toList();
    }

    private static Understanding.Column column(Columns columns, int index) {
        boolean named = index < columns.names().size();
        return new Understanding.Column(
                index + 1, named ? Optional.of(Excerpt.of(columns.names().get(index))) : Optional.empty());
    }

    private static List<Understanding.Line> lines(NumberTable table, TextLayout layout) {
        Row row = new Row(layout);
        return table.lines().stream()
                .limit(ROWS_SHOWN)
                .map(line -> new Understanding.Line(line.number(), Excerpt.of(line.text()), read(line, row, layout)))
                .toList();
    }

    private static Understanding.Meaning read(SampleLine line, Row row, TextLayout layout) {
        String problem = row.read(line.bytes(), 0, line.bytes().length);
        if (!problem.isEmpty()) {
            return new Understanding.Unread(problem);
        }
        boolean timed = layout.columns().time().isPresent();
        return new Understanding.Read(
                row.value(), row.condition(), timed ? OptionalDouble.of(row.nanos() / 1e9) : OptionalDouble.empty());
    }
}
