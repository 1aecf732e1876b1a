package org.slugpeak.cli.display;

import java.util.List;
import java.util.Locale;

/**
 * Writes what the user is asked to do over the middle of the screen, in block letters as large as the room allows; where even the
 * smallest do not fit, only what stands before the first comma; where that does not fit either, in plain letters. One thread at a time.
 */
final class Board {

    private static final int LARGEST = 3;

    private final Symbols symbols;
    private final BlockLetters letters;

    Board(Symbols symbols, BlockLetters letters) {
        this.symbols = symbols;
        this.letters = letters;
    }

    void draw(Grid grid, int top, int rows, int left, String text) {
        String first = text.split(", ", 2)[0];
        if (!blocks(grid, top, rows, left, text) && !blocks(grid, top, rows, left, first)) {
            plain(grid, top, rows, left, text);
        }
    }

    private boolean blocks(Grid grid, int top, int rows, int left, String text) {
        String capitals = text.toUpperCase(Locale.ROOT);
        int columns = grid.width() - 2 * left;
        for (int scale = letters.knows(capitals) ? LARGEST : 0; scale > 0; scale--) {
            int height = BlockLetters.rows(scale, symbols);
            int characters = (columns + scale) / (scale * BlockLetters.PITCH);
            List<String> lines = Wrapped.text(capitals, characters);
            if (isWhole(capitals, characters) && lines.size() * height <= rows) {
                int pitch = lines.size() * (height + 1) - 1 <= rows ? height + 1 : height;
                int first = top + (rows - lines.size() * pitch) / 2;
                for (int i = 0; i < lines.size(); i++) {
                    letters.draw(grid, first + i * pitch, left, lines.get(i), scale, symbols, Grid.Style.STRONG);
                }
                return true;
            }
        }
        return false;
    }

    private static boolean isWhole(String text, int characters) {
        return List.of(text.split(" +")).stream().allMatch(word -> word.length() <= characters);
    }

    private static void plain(Grid grid, int top, int rows, int left, String text) {
        List<String> lines = Wrapped.text(text, grid.width() - 2 * left);
        int pitch = 2 * lines.size() - 1 <= rows ? 2 : 1;
        int first = top + Math.max(0, (rows - pitch * (lines.size() - 1) - 1) / 2);
        for (int i = 0; i < Math.min(lines.size(), rows); i++) {
            grid.write(first + i * pitch, left, lines.get(i), Grid.Style.STRONG);
        }
    }
}
