package org.slugpeak.bridge.file;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Rows of numbers that follow each other in a text. Immutable.
 *
 * @param shape how its lines are meant
 * @param lines the rows, at least one
 * @param kinds what the cells of its columns are
 * @param names of the columns; empty without a header line
 */
record NumberTable(Shape shape, List<SampleLine> lines, String kinds, List<String> names) {

    /** So many lines with words in them weigh no more than one with numbers only. */
    private static final int WHOLE = 4;

    /** So many lines with words in the same places are a table. */
    private static final int ROWS_ENOUGH = 3;

    private static final Pattern NUMBER_OF_OTHERS = Pattern.compile("[+-]?\\d++(?:[.,;]\\d++)++");

    /** The longest table of that shape in the lines, which hold neither blank lines nor comments; none gives no rows. */
    static NumberTable longest(Shape shape, List<SampleLine> lines) {
        List<SampleLine> best = List.of();
        String bestKinds = "";
        List<SampleLine> run = new ArrayList<>();
        String kinds = "";
        for (SampleLine line : lines) {
            String here = shape.kinds(shape.cells(line.bytes()));
            boolean goesOn = Shape.alike(kinds, here);
            if (!goesOn) {
                run = new ArrayList<>();
                kinds = here;
            }
            if (here.indexOf(Shape.NUMBER) >= 0 || here.indexOf(Shape.STAND_IN) >= 0) {
                run.add(line);
                kinds = merged(kinds, here);
            }
            if (weight(run, kinds) > weight(best, bestKinds)) {
                best = List.copyOf(run);
                bestKinds = kinds;
            }
        }
        return new NumberTable(shape, List.copyOf(best), bestKinds, List.of());
    }

    /** A title line that holds a number outweighs no table. */
    private static int weight(List<SampleLine> run, String kinds) {
        return run.size() * (kinds.indexOf(Shape.WORD) < 0 ? WHOLE : 1);
    }

    NumberTable named(List<String> columnNames) {
        return new NumberTable(shape, lines, kinds, List.copyOf(columnNames));
    }

    int columns() {
        return kinds.length();
    }

    /** Whether every cell is a number, a time, or empty. */
    boolean isWhole() {
        return kinds.indexOf(Shape.WORD) < 0;
    }

    /** Whether it is one, and not a sentence with a number in it. */
    boolean isCredible() {
        return isWhole()
                || lines.size() >= ROWS_ENOUGH
                || names.stream()
                        .map(ColumnName::of)
                        .anyMatch(it -> it.timeExponent().isPresent()
                                || it.readingUnit().isPresent());
    }

    /** Whether something in it would be a number with another decimal point: then it is not meant so. */
    boolean isBroken() {
        return IntStream.range(0, columns())
                .filter(each -> kinds.charAt(each) == Shape.WORD)
                .anyMatch(each -> column(each).stream()
                        .anyMatch(cell -> NUMBER_OF_OTHERS.matcher(cell).matches()));
    }

    boolean isNumber(int column) {
        return kinds.charAt(column) == Shape.NUMBER || kinds.charAt(column) == Shape.STAND_IN;
    }

    boolean isTime(int column) {
        return kinds.charAt(column) == Shape.TIME;
    }

    /** The cells of one column, from the top; empty texts where a row is shorter. */
    List<String> column(int index) {
        return lines.stream()
                .map(line -> shape.cells(line.bytes()))
                .map(cells -> index < cells.size() ? cells.get(index) : "")
                .toList();
    }

    private static String merged(String kinds, String others) {
        StringBuilder both = new StringBuilder(others.length() > kinds.length() ? others : kinds);
        for (int i = 0; i < Math.min(kinds.length(), others.length()); i++) {
            char known = kinds.charAt(i);
            char other = others.charAt(i);
            both.setCharAt(i, Shape.fits(known, other) && other != Shape.NOTHING ? other : known);
        }
        return both.toString();
    }
}
