package org.slugpeak.cli.display;

import org.slugpeak.cli.moment.Level;
import org.slugpeak.cli.words.ScreenPhrase;

/** A bar that grows from the mark in the middle to either side, by parts of the largest swing. Immutable. */
record ZeroBar() implements BarFace {

    @Override
    public int mark(int width) {
        return width / 2;
    }

    @Override
    public int railEnd(int mark) {
        return 2 * mark - LEFT;
    }

    @Override
    public int start(int mark) {
        return mark;
    }

    @Override
    public int end(int mark, Level level) {
        return mark + (int) Math.round((mark - LEFT) * BarScale.deflection(level.value(), level.swing()));
    }

    @Override
    public String label() {
        return "";
    }

    @Override
    public void ticks(Grid grid, int row, int mark) {
        grid.write(row, LEFT, "-", Grid.Style.PLAIN);
        grid.write(row, mark - 2, ScreenPhrase.ZERO.of(), Grid.Style.STRONG);
        grid.write(row, 2 * mark - LEFT - 1, "+", Grid.Style.PLAIN);
    }
}
