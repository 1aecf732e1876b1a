package org.slugpeak.cli.display;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.slugpeak.bridge.text.SafeText;

/** A page of character cells. What does not fit is cut off, never wrapped. One thread at a time. */
final class Grid {

    private final int width;
    private final int height;
    private final char[][] cells;
    private final Style[][] styles;

    /** What a cell means; how that looks is decided where it is sent to the terminal. */
    enum Style {
        /** The terminal's own colours. */
        PLAIN,
        /** Must be read first. */
        STRONG,
        /** The reading, on its way to the best. */
        READING,
        /** The hand goes the wrong way. */
        TURN_ROUND,
        /** The hand is to rest. */
        REST,
        /** It is recorded. */
        DONE,
        /** Something is asked. */
        ASK,
        /** Something is wrong. */
        ALERT,
        /** Something has just happened. */
        FLASH,
        /** What a camera reads: light where there are blocks. */
        CODE
    }

    Grid(int width, int height) {
        this.width = Math.max(1, width);
        this.height = Math.max(1, height);
        cells = new char[this.height][this.width];
        styles = new Style[this.height][this.width];
        for (int row = 0; row < this.height; row++) {
            Arrays.fill(cells[row], ' ');
            Arrays.fill(styles[row], Style.PLAIN);
        }
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    void put(int row, int column, char character, Style style) {
        if (row >= 0 && row < height && column >= 0 && column < width) {
            cells[row][column] = SafeText.isSafe(character) || Character.isSurrogate(character) ? character : '?';
            styles[row][column] = style;
        }
    }

    void write(int row, int column, String text, Style style) {
        for (int i = 0; i < text.length(); i++) {
            put(row, column + i, text.charAt(i), style);
        }
    }

    void fill(int row, Style style) {
        for (int column = 0; column < width; column++) {
            put(row, column, ' ', style);
        }
    }

    char at(int row, int column) {
        return cells[row][column];
    }

    Style styleAt(int row, int column) {
        return styles[row][column];
    }

    String line(int row) {
        return new String(cells[row]);
    }

    List<String> lines() {
        return IntStream.range(0, height).mapToObj(this::line).toList();
    }
}
