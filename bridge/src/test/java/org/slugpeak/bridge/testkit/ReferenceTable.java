package org.slugpeak.bridge.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A table of check values in {@code shared/reference}: rows of text between semicolons, comments behind a hash. Stateless. */
public final class ReferenceTable {

    private ReferenceTable() {}

    /**
     * Reads a table.
     *
     * @param name of the file
     * @return its rows, at least one
     */
    public static List<List<String>> rows(String name) {
        try {
            List<List<String>> rows =
                    Files.readAllLines(Path.of(System.getProperty("slugpeak.shared"), "reference", name)).stream()
                            .filter(line -> !line.startsWith("#"))
                            .map(line -> List.of(line.split(";", -1)))
                            .toList();
            if (rows.isEmpty()) {
                throw new IllegalStateException(name + " has no rows");
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
