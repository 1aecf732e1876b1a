package org.slugpeak.cli.display;

import java.util.List;
import java.util.Locale;

/**
 * Writes what the user is asked to do over the middle of the screen, in block letters as large as the room allows; where even the
 * smallest do not fit, in plain ones. One thread at a time.
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
        String capitals = text.toUpperCase(Locale.ROOT);
        int columns = grid.width() - 2 * left;
        for (int scale = letters.knows(capitals) ? LARGEST : 0; scale > 0; scale--) {
            int pitch = BlockLetters.rows(scale, symbols) + 1;
            int characters = (columns + scale) / (scale * BlockLetters.PITCH);
            List<String> lines = Wrapped.text(capitals, characters);
            if (isWhole(capitals, characters) && lines.size() * pitch - 1 <= rows) {
                int first = top + (rows - lines.size() * pitch + 1) / 2;
                for (int i = 0; i < lines.size(); i++) {
                    letters.draw(grid, first + i * pitch, left, lines.get(i), scale, symbols, Grid.Style.STRONG);
                }
                return;
            }
        }
        plain(grid, top, rows, left, Wrapped.text(text, columns));
    }

    private static boolean isWhole(String text, int characters) {
        return List.of(text.split(" +")).stream().allMatch(word -> word.length() <= characters);
    }

    private static void plain(Grid grid, int top, int rows, int left, List<String> lines) {
        int pitch = 2 * lines.size() - 1 <= rows ? 2 : 1;
        int first = top + Math.max(0, (rows - pitch * (lines.size() - 1) - 1) / 2);
        for (int i = 0; i < Math.min(lines.size(), rows); i++) {
            grid.write(first + i * pitch, left, lines.get(i), Grid.Style.STRONG);
        }
    }
}
