package org.slugpeak.bridge.file;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.slugpeak.bridge.source.BadInput;

/** What stands above the first reading of a text that comes line by line: titles, comments, the header line. */
final class Preamble {

    /** A logger that has written this many lines without a number has none. */
    private static final int LONGEST = 64;

    private final String name;
    private final CsvOptions options;
    private final Deque<SampleLine> above = new ArrayDeque<>();
    private long titles;
    private String secondTitle = "";

    Preamble(String name, CsvOptions options) {
        this.name = name;
        this.options = options;
    }

    /**
     * What a line was.
     *
     * @param layout present where it is the first row of the table
     * @param problem what is wrong with it; empty for a title
     */
    record Outcome(Optional<TextLayout> layout, String problem) {}

    /** How many lines were taken for titles, but for the first, which may be a header line. */
    long titlesUnderTheFirst() {
        return Math.max(0, titles - 1);
    }

    String secondTitle() {
        return secondTitle;
    }

    /** Keeps a comment: it may name the columns. */
    void comment(SampleLine line) {
        keep(line);
    }

    /** Takes a line that is neither blank nor a comment. */
    Outcome take(SampleLine line) throws BadInput {
        List<SampleLine> lines = new ArrayList<>(above);
        lines.add(line);
        Optional<NumberTable> table = Survey.table(lines, options.decimalComma(), name)
                .filter(found -> found.lines().contains(line));
        boolean sure = table.isPresent()
                && (table.get().isCredible() || options.valueColumn().isPresent());
        if (sure) {
            Columns columns = new ColumnChoice(table.get(), options, name).columns();
            return new Outcome(Optional.of(TextLayout.of(table.get(), columns)), "");
        }
        String problem = "'" + Excerpt.of(line.text()) + "' is not a number";
        if (beginsWithNumber(line) || above.size() >= LONGEST) {
            return new Outcome(Optional.empty(), problem);
        }
        titles++;
        secondTitle = titles == 2 ? "line " + line.number() + ": " + problem : secondTitle;
        keep(line);
        return new Outcome(Optional.empty(), "");
    }

    private void keep(SampleLine line) {
        if (above.size() < LONGEST) {
            above.add(line);
        }
    }

    private static boolean beginsWithNumber(SampleLine line) {
        String text = line.text();
        return !text.isEmpty() && "+-.0123456789".indexOf(text.charAt(0)) >= 0;
    }
}
