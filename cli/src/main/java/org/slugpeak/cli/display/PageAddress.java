package org.slugpeak.cli.display;

import java.util.List;
import org.slugpeak.cli.words.ScreenPhrase;

/**
 * Where the page for a browser is, in letters and as a code for a camera. Immutable; any thread may use it.
 *
 * @param url its address
 * @param halves the code in half blocks, from the top
 * @param whole the same in whole cells, two to a module
 */
public record PageAddress(String url, List<String> halves, List<String> whole) implements Overlay {

    private static final int MARGIN = 1;

    @Override
    public void draw(Grid grid, Symbols symbols) {
        List<String> code = symbols.hasHalves() ? halves : whole;
        List<String> address = Wrapped.text(url, grid.width() - 2 * MARGIN);
        int width = code.get(0).length();
        if (width <= grid.width() && code.size() + address.size() <= grid.height()) {
            int left = (grid.width() - width) / 2;
            write(grid, 0, left, code, Grid.Style.CODE);
            write(grid, code.size(), MARGIN, address, Grid.Style.STRONG);
        } else {
            write(grid, 0, MARGIN, address, Grid.Style.STRONG);
            String need = ScreenPhrase.CODE_NEEDS.of(width, code.size() + address.size());
            write(grid, address.size() + 1, MARGIN, Wrapped.text(need, grid.width() - 2 * MARGIN), Grid.Style.PLAIN);
        }
    }

    private static void write(Grid grid, int top, int left, List<String> rows, Grid.Style style) {
        for (int i = 0; i < rows.size(); i++) {
            grid.write(top + i, left, rows.get(i), style);
        }
    }
}
