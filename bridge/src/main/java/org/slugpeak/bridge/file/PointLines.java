package org.slugpeak.bridge.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.slugpeak.bridge.disk.SmallFile;
import org.slugpeak.bridge.source.BadInput;

/**
 * Numbers that somebody wrote down, some to a line: separators and decimal commas are found as in a file of readings, a heading,
 * blank lines and lines that begin with {@code #} are passed over. All methods may be called by any thread.
 */
public final class PointLines {

    /** Two numbers with decimal commas, and commas between them, look so. */
    private static final int TWO_WITH_COMMAS = 4;

    private PointLines() {}

    /**
     * One line.
     *
     * @param number counted from 1
     * @param numbers in their order; empty where one of them is none
     */
    public record Line(long number, List<Double> numbers) {}

    /**
     * Reads a file of up to {@value SmallFile#MOST_BYTES} bytes.
     *
     * @param file where
     * @param decimalComma whether numbers are written {@code 1,25}, whatever else they might mean
     * @return every line but headings, remarks and blank lines
     * @throws BadInput where it cannot be read, or its numbers may mean two things
     */
    public static List<Line> read(Path file, boolean decimalComma) throws BadInput {
        List<SampleLine> lines = lines(file);
        Optional<NumberTable> table = Survey.table(lines, decimalComma, file.toString());
        Shape shape = table.map(NumberTable::shape)
                .orElse(decimalComma ? new Shape(Separator.SEMICOLONS, ',') : new Shape(Separator.COMMAS, '.'));
        if (table.isPresent()) {
            refusePairs(table.get(), file);
        }
        long first = lines.stream()
                .filter(line -> !line.isBlank() && !line.isComment())
                .filter(line -> !Character.isLetter(line.text().charAt(0)))
                .mapToLong(SampleLine::number)
                .findFirst()
                .orElse(0);
        return lines.stream()
                .filter(line -> line.number() >= first && !line.isBlank() && !line.isComment())
                .map(line -> new Line(line.number(), numbers(shape, line)))
                .toList();
    }

    private static List<SampleLine> lines(Path file) throws BadInput {
        try {
            TextStream text = TextStream.open(Files.newInputStream(file), SmallFile.MOST_BYTES + 1, file.toString());
            text.whole().close();
            if (!text.isShort()) {
                throw new IOException("it has more than " + SmallFile.MOST_BYTES + " bytes");
            }
            return SampleLine.of(text.head(), true);
        } catch (IOException e) {
            throw new BadInput(
                    "cannot read the points in " + file + " (" + e.getMessage()
                            + "): check that the file is there and is text",
                    e);
        }
    }

    private static List<Double> numbers(Shape shape, SampleLine line) {
        List<Optional<NumberCell>> cells = shape.cells(line.bytes()).stream()
                .map(cell -> NumberCell.parse(cell, shape.point()))
                .toList();
        return cells.stream().allMatch(Optional::isPresent)
                ? cells.stream()
                        .flatMap(Optional::stream)
                        .map(NumberCell::value)
                        .toList()
                : List.of();
    }

    private static void refusePairs(NumberTable table, Path file) throws BadInput {
        boolean four = table.names().isEmpty()
                && table.columns() == TWO_WITH_COMMAS
                && table.shape().equals(new Shape(Separator.COMMAS, '.'));
        Optional<SampleLine> doubtful = table.lines().stream()
                .filter(line -> four && line.text().matches("[0-9, ]*"))
                .filter(line -> table.shape().cells(line.bytes()).size() == TWO_WITH_COMMAS)
                .findFirst();
        if (doubtful.isPresent()) {
            SampleLine line = doubtful.get();
            List<String> cells = table.shape().cells(line.bytes());
            throw new BadInput(
                    file + " line " + line.number() + ": '" + Excerpt.of(line.text()) + "' may be four numbers, or "
                            + cells.get(0) + "." + cells.get(1) + " and " + cells.get(2) + "." + cells.get(3)
                            + ": separate the columns with semicolons, or name them in a heading");
        }
    }
}
