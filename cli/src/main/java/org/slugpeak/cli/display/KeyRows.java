package org.slugpeak.cli.display;

import java.util.ArrayList;
import java.util.List;

/** The key map at the foot of a page. All methods are pure. */
final class KeyRows {

    private static final String GAP = "  ";

    private KeyRows() {}

    /** As many rows as the window can spare; what does not fit is left out before the last, which is the way out. */
    static List<String> fitting(List<String> phrases, int columns, int height) {
        List<String> left = new ArrayList<>(phrases);
        List<String> rows = Wrapped.pieces(left, GAP, columns);
        while (rows.size() > Layout.mostKeyRows(height) && left.size() > 1) {
            left.remove(left.size() - 2);
            rows = Wrapped.pieces(left, GAP, columns);
        }
        return rows;
    }
}
