package org.slugpeak.core.receiver;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table of the reference data: named columns of numbers. */
record Golden(List<String> columns, List<double[]> rows) {

    static Golden spice(String file) {
        Path path = Path.of(System.getProperty("slugpeak.shared"), "reference", "spice", file);
        try {
            List<String> lines = Files.readAllLines(path);
            List<double[]> rows = new ArrayList<>();
            for (String line : lines.subList(2, lines.size())) {
                rows.add(Arrays.stream(line.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray());
            }
            return new Golden(List.of(lines.get(1).split(",")), rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double[] column(String name) {
        int index = columns.indexOf(name);
        if (index < 0) {
            throw new IllegalArgumentException("no column " + name + " in " + columns);
        }
        return rows.stream().mapToDouble(row -> row[index]).toArray();
    }
}
