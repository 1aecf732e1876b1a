package org.slugpeak.cli.display;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into rows between words. Stateless. */
public final class Wrapped {

    private Wrapped() {}

    /**
     * Breaks a line between its words; a word that is too long for a row is cut.
     *
     * @param line words with blanks between them
     * @param columns how many characters a row takes, 1 or more
     * @return its rows; none of a blank line
     */
    public static List<String> text(String line, int columns) {
        return pieces(List.of(line.trim().split(" +")), " ", columns);
    }

    /** Puts as many pieces into a row as fit. */
    static List<String> pieces(List<String> pieces, String between, int width) {
        int columns = Math.max(1, width);
        List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder();
        for (String piece : pieces) {
            if (row.length() > 0 && row.length() + between.length() + piece.length() > columns) {
                rows.add(row.toString());
                row.setLength(0);
            }
            row.append(row.length() == 0 ? "" : between).append(piece);
            for (; row.length() > columns; row.delete(0, columns)) {
                rows.add(row.substring(0, columns));
            }
        }
        if (row.length() > 0) {
            rows.add(row.toString());
        }
        return rows;
    }
}
