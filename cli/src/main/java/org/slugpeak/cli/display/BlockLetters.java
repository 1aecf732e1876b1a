package org.slugpeak.cli.display;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Letters made of square dots, where the terminal has half blocks two to a cell. The shapes are in {@code letters.txt}: seven rows of dots under
 * each line of characters, {@value #PITCH} columns to a character. Immutable; any thread may use it.
 */
final class BlockLetters {

    /** Rows of dots of a character. */
    static final int DOT_ROWS = 7;

    /** Columns from one character to the next. */
    static final int PITCH = 6;

    private final Map<Character, List<String>> shapes;

    private BlockLetters(Map<Character, List<String>> shapes) {
        this.shapes = Map.copyOf(shapes);
    }

    static BlockLetters load() {
        try (InputStream stream = Objects.requireNonNull(BlockLetters.class.getResourceAsStream("letters.txt"));
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.US_ASCII))) {
            List<String> lines = reader.lines().toList();
            Map<Character, List<String>> shapes = new HashMap<>();
            for (int top = 0; top + DOT_ROWS < lines.size(); top += DOT_ROWS + 1) {
                readBand(lines.subList(top, top + DOT_ROWS + 1), shapes);
            }
            return new BlockLetters(shapes);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static void readBand(List<String> band, Map<Character, List<String>> shapes) {
        String names = band.get(0);
        for (int column = 0; column < names.length(); column += PITCH) {
            int left = column;
            List<String> shape = band.subList(1, band.size()).stream()
                    .map(row -> row.substring(left, left + PITCH - 1))
                    .toList();
            shapes.put(names.charAt(column), shape);
        }
    }

    static int columns(String text, int scale) {
        return text.isEmpty() ? 0 : scale * (text.length() * PITCH - 1);
    }

    static int rows(int scale, Symbols symbols) {
        return symbols.hasHalves() ? (DOT_ROWS * scale + 1) / 2 : DOT_ROWS * wholeRows(scale);
    }

    /** Without half cells a dot is as high as it must be to look square again. */
    private static int wholeRows(int scale) {
        return (scale + 1) / 2;
    }

    boolean knows(String text) {
        return text.chars().allMatch(character -> character == ' ' || shapes.containsKey((char) character));
    }

    void draw(Grid grid, int row, int column, String text, int scale, Symbols symbols, Grid.Style style) {
        for (int y = 0; y < rows(scale, symbols); y++) {
            for (int x = 0; x < columns(text, scale); x++) {
                char dot = dot(text, x / scale, y, scale, symbols);
                if (dot != ' ') {
                    grid.put(row + y, column + x, dot, style);
                }
            }
        }
    }

    private char dot(String text, int dotColumn, int cellRow, int scale, Symbols symbols) {
        if (!symbols.hasHalves()) {
            return isDot(text, dotColumn, cellRow / wholeRows(scale)) ? symbols.full() : ' ';
        }
        boolean above = isDot(text, dotColumn, 2 * cellRow / scale);
        boolean below = isDot(text, dotColumn, (2 * cellRow + 1) / scale);
        if (above && below) {
            return symbols.full();
        }
        return above ? symbols.upper() : below ? symbols.lower() : ' ';
    }

    private boolean isDot(String text, int dotColumn, int dotRow) {
        List<String> shape = shapes.getOrDefault(text.charAt(dotColumn / PITCH), List.of());
        int inside = dotColumn % PITCH;
        return dotRow < shape.size() && inside < PITCH - 1 && shape.get(dotRow).charAt(inside) == '#';
    }
}
