package org.slugpeak.cli.display;

/** Finds block letters on a page. */
final class BlockText {

    private static final BlockLetters LETTERS = BlockLetters.load();

    private BlockText() {}

    /** Whether a text stands somewhere on the page in block letters of that size. */
    static boolean stands(Grid page, String text, int scale) {
        int width = BlockLetters.columns(text, scale);
        int height = BlockLetters.rows(scale, Symbols.BLOCKS);
        Grid wanted = new Grid(width, height);
        LETTERS.draw(wanted, 0, 0, text, scale, Symbols.BLOCKS, Grid.Style.PLAIN);
        for (int row = 0; row + height <= page.height(); row++) {
            for (int column = 0; column + width <= page.width(); column++) {
                if (matches(page, row, column, wanted)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean matches(Grid page, int top, int left, Grid wanted) {
        for (int row = 0; row < wanted.height(); row++) {
            String part = page.line(top + row).substring(left, left + wanted.width());
            if (!part.equals(wanted.line(row))) {
                return false;
            }
        }
        return true;
    }
}
