package org.slugpeak.bridge.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Cuts text in which quotes stand, by the rules of RFC 4180 as a CSV library reads them. Stateless. */
final class QuotedLine {

    private QuotedLine() {}

    /** The cells of one line; empty where its quotes do not match. */
    static Optional<List<String>> cells(String line, Separator separator) {
        List<List<String>> rows = rows(line, separator);
        return rows.size() == 1 ? Optional.of(rows.get(0)) : Optional.empty();
    }

    /** The rows of a text, whose cells may hold line ends; none where its quotes do not match. */
    static List<List<String>> rows(String text, Separator separator) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter((char) separator.letter())
                .setIgnoreSurroundingSpaces(true)
                .setTrailingData(true)
                .get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            return parser.stream()
                    .map(CSVRecord::toList)
                    .map(cells -> separator.repeats()
                            ? cells.stream().filter(cell -> !cell.isEmpty()).toList()
                            : cells)
                    .toList();
        } catch (IOException | UncheckedIOException | IllegalStateException unmatched) {
            return List.of();
        }
    }
}
