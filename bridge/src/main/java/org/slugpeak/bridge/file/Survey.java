package org.slugpeak.bridge.file;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.slugpeak.bridge.source.BadInput;

/**
 * Finds the table in a text by its rows of numbers: for each separator and decimal point the longest run of lines that are
 * built alike, and of those the one that explains its lines best. Titles above it are passed over; the last line before it
 * names the columns. What can be read in two ways is refused with both. Stateless.
 */
final class Survey {

    /** Digits in groups of three: a decimal comma, or none. */
    private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}(?:,\\d{3})++");

    private static final int LONGEST_HEADER = 5;

    private Survey() {}

    /** The table; empty where no line has a number, or the header line does not fit to it. */
    static Optional<NumberTable> table(List<SampleLine> lines, boolean decimalComma, String name) throws BadInput {
        List<SampleLine> rows = lines.stream()
                .filter(line -> !line.isBlank() && !line.isComment())
                .toList();
        List<NumberTable> found = shapes(rows, decimalComma).stream()
                .map(shape -> NumberTable.longest(shape, rows))
                .filter(table -> !table.lines().isEmpty() && !table.isBroken())
                .map(table -> named(table, lines))
                .toList();
        Optional<NumberTable> best = best(found);
        if (best.isPresent() && !decimalComma) {
            refuseGrouped(best.get(), name);
        }
        return best.filter(table -> !namesOtherColumns(table, rows));
    }

    private static List<Shape> shapes(List<SampleLine> rows, boolean decimalComma) {
        List<Shape> shapes = new ArrayList<>();
        for (Separator separator : Separator.values()) {
            boolean occurs = separator == Separator.COMMAS
                    || rows.stream().anyMatch(line -> line.text().indexOf(separator.letter()) >= 0);
            if (!occurs) {
                continue;
            }
            if (!decimalComma) {
                shapes.add(new Shape(separator, '.'));
            }
            boolean quoted = rows.stream().anyMatch(line -> line.text().indexOf('"') >= 0);
            shapes.add(new Shape(separator == Separator.COMMAS && !quoted ? Separator.SEMICOLONS : separator, ','));
        }
        return shapes.stream().distinct().toList();
    }

    private static Optional<NumberTable> best(List<NumberTable> found) {
        List<NumberTable> left = found;
        for (Predicate<NumberTable> rule :
                List.<Predicate<NumberTable>>of(Survey::isNamedForSure, NumberTable::isWhole)) {
            List<NumberTable> chosen = left.stream().filter(rule).toList();
            left = chosen.isEmpty() ? left : chosen;
        }
        Optional<NumberTable> best = Optional.empty();
        for (NumberTable each : left) {
            if (best.isEmpty() || each.lines().size() > best.get().lines().size()) {
                best = Optional.of(each);
            }
        }
        return best;
    }

    /** Whether a header line names a time, so that its separator is known for sure. */
    private static boolean isNamedForSure(NumberTable table) {
        return table.columns() > 1 && namesTime(table.names());
    }

    private static boolean namesTime(List<String> names) {
        return names.stream()
                .map(ColumnName::of)
                .anyMatch(name -> name.timeExponent().isPresent() || name.isDate());
    }

    private static NumberTable named(NumberTable table, List<SampleLine> lines) {
        long first = table.lines().get(0).number();
        List<SampleLine> above = lines.stream()
                .filter(line -> line.number() < first && !line.isBlank() && !line.isComment())
                .toList();
        if (!above.isEmpty()) {
            Optional<List<String>> names =
                    header(table, above.get(above.size() - 1).bytes(), false);
            return names.map(table::named).orElseGet(() -> namedInSeveralLines(table, above));
        }
        Optional<SampleLine> comment = lines.stream()
                .filter(line -> line.number() < first && line.isComment())
                .reduce((one, next) -> next);
        return comment.flatMap(line -> header(table, line.text().substring(1).getBytes(StandardCharsets.UTF_8), true))
                .map(table::named)
                .orElse(table);
    }

    /** The names that a line gives to the columns; a comment must name a time to be believed. */
    private static Optional<List<String>> header(NumberTable table, byte[] line, boolean comment) {
        List<String> names = table.shape().cells(line);
        boolean fits = names.size() >= table.columns()
                && table.shape().kinds(names).indexOf(Shape.WORD) >= 0
                && (!comment || (names.size() > 1 && namesTime(names)));
        return fits ? Optional.of(names) : Optional.empty();
    }

    /** A cell of the header line may hold line ends, where it stands in quotes. */
    private static NumberTable namedInSeveralLines(NumberTable table, List<SampleLine> above) {
        for (int count = Math.min(LONGEST_HEADER, above.size()); count > 1; count--) {
            String text = above.subList(above.size() - count, above.size()).stream()
                    .map(SampleLine::text)
                    .collect(Collectors.joining("\n"));
            List<List<String>> rows = QuotedLine.rows(text, table.shape().separator());
            if (rows.size() == 1 && rows.get(0).size() == table.columns()) {
                return table.named(rows.get(0).stream()
                        .map(name -> name.replace('\n', ' '))
                        .toList());
            }
        }
        return table;
    }

    /** Whether the line above names a time, but more or fewer columns than the rows have. */
    private static boolean namesOtherColumns(NumberTable table, List<SampleLine> rows) {
        int at = rows.indexOf(table.lines().get(0));
        if (at <= 0 || !table.names().isEmpty()) {
            return false;
        }
        List<String> names =
                new Shape(Separator.COMMAS, '.').cells(rows.get(at - 1).bytes());
        return names.size() > 1 && namesTime(names);
    }

    private static void refuseGrouped(NumberTable table, String name) throws BadInput {
        if (table.shape().point() != ',') {
            return;
        }
        List<String> commas = new ArrayList<>();
        for (int i = 0; i < table.columns(); i++) {
            if (table.isNumber(i)) {
                table.column(i).stream().filter(cell -> cell.indexOf(',') >= 0).forEach(commas::add);
            }
        }
        if (!commas.isEmpty()
                && commas.stream().allMatch(cell -> GROUPED.matcher(cell).matches())) {
            String cell = commas.get(0);
            throw new BadInput(name + ": '" + Excerpt.of(cell) + "' may be "
                    + cell.replaceFirst(",", ".") + " or " + cell.replace(",", "")
                    + ": use --decimal-comma if the comma is the decimal point, otherwise save the numbers without"
                    + " commas");
        }
    }
}
