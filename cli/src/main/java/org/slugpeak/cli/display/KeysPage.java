package org.slugpeak.cli.display;

import java.util.List;

/**
 * Tells of all keys in full, or in one word each where the window is too small for that. Immutable; any thread may use it.
 *
 * @param keys what they do
 */
record KeysPage(List<KeyHint> keys) implements Overlay {

    private static final int MARGIN = 1;
    private static final String GAP = "  ";

    @Override
    public void draw(Grid grid, Symbols symbols) {
        int left = MARGIN
                + keys.stream().mapToInt(hint -> hint.names().length()).max().orElse(0)
                + GAP.length();
        int columns = grid.width() - left - MARGIN;
        int rows = keys.stream().mapToInt(hint -> meaning(hint, columns).size()).sum();
        if (rows <= grid.height()) {
            inFull(grid, left, columns);
        } else {
            inShort(grid);
        }
    }

    private void inFull(Grid grid, int left, int columns) {
        int row = 0;
        for (KeyHint hint : keys) {
            grid.write(row, MARGIN, hint.names(), Grid.Style.STRONG);
            for (String line : meaning(hint, columns)) {
                grid.write(row++, left, line, Grid.Style.PLAIN);
            }
        }
    }

    private void inShort(Grid grid) {
        List<String> phrases = keys.stream().map(KeyHint::phrase).toList();
        int row = 0;
        for (String line : Wrapped.pieces(phrases, GAP, grid.width() - 2 * MARGIN)) {
            grid.write(row++, MARGIN, line, Grid.Style.PLAIN);
        }
    }

    private static List<String> meaning(KeyHint hint, int columns) {
        return Wrapped.text(hint.action().meaning(), columns);
    }
}
