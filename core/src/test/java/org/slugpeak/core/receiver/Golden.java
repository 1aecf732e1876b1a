package org.slugpeak.core.receiver;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** A table of the reference data: named columns, after lines of remarks. */
record Golden(List<String> columns, List<String[]> rows) {

    private static final String COMMA_OUTSIDE_QUOTES = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";

    static Golden spice(String file) {
        return of("spice", file);
    }

    static Golden of(String folder, String file) {
        Path path = Path.of(System.getProperty("slugpeak.shared"), "reference", folder, file);
        try {
            List<String[]> lines = Files.readAllLines(path).stream()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(COMMA_OUTSIDE_QUOTES))
                    .toList();
            return new Golden(Arrays.asList(lines.get(0)), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows that hold this text in that column. */
    Golden where(String name, String value) {
        int index = index(name);
        return new Golden(
                columns, rows.stream().filter(row -> row[index].equals(value)).toList());
    }

    double[] column(String name) {
        int index = index(name);
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[index])).toArray();
    }

    String text(int row, String name) {
        return rows.get(row)[index(name)];
    }

    double number(int row, String name) {
        return Double.parseDouble(text(row, name));
    }

    int size() {
        return rows.size();
    }

    private int index(String name) {
        int index = columns.indexOf(name);
        if (index < 0) {
            throw new IllegalArgumentException("no column " + name + " in " + columns);
        }
        return index;
    }
}
