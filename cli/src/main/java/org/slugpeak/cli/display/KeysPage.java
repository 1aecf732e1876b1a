package org.slugpeak.cli.display;

import java.util.List;

/** Tells of all keys in full, or in one word each where the window is too small for that. Stateless. */
final class KeysPage {

    private static final int MARGIN = 1;

    private KeysPage() {}

    static void draw(Grid grid, List<KeyHint> keys) {
        int left = MARGIN
                + keys.stream().mapToInt(hint -> hint.key().length()).max().orElse(0)
                + 2;
        int columns = grid.width() - left - MARGIN;
        int rows = keys.stream().mapToInt(hint -> meaning(hint, columns).size()).sum();
        int row = 0;
        for (KeyHint hint : keys) {
            List<String> meaning = rows <= grid.height()
                    ? meaning(hint, columns)
                    : List.of(hint.action().word());
            grid.write(row, MARGIN, hint.key(), Grid.Style.STRONG);
            for (String line : meaning) {
                grid.write(row++, left, line, Grid.Style.PLAIN);
            }
        }
    }

    private static List<String> meaning(KeyHint hint, int columns) {
        return Wrapped.text(hint.action().meaning(), columns);
    }
}
