package org.slugpeak.cli.arithmetic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** A plain table: right-aligned columns, as wide as they need to be. One thread at a time. */
public final class Table {

    private final List<List<String>> rows = new ArrayList<>();

    /**
     * A table with its headings.
     *
     * @param headings one a column
     */
    public Table(String... headings) {
        row(headings);
    }

    /**
     * Adds a row.
     *
     * @param cells one a column
     */
    public void row(String... cells) {
        rows.add(Arrays.asList(cells));
    }

    /**
     * The whole table.
     *
     * @return lines without an end after the last
     */
    public String text() {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int column = 0; column < columns; column++) {
                widths[column] = Math.max(widths[column], row.get(column).length());
            }
        }
        return rows.stream().map(row -> line(row, widths)).collect(Collectors.joining(System.lineSeparator()));
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < widths.length; column++) {
            String cell = row.get(column);
            line.append(" ".repeat(widths[column] - cell.length() + (column == 0 ? 0 : 3)))
                    .append(cell);
        }
        return line.toString();
    }
}
