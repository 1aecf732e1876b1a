package org.slugpeak.cli.display;

import org.slugpeak.cli.moment.Level;

/**
 * A bar that grows from the left to the mark, by decibels. Immutable.
 *
 * @param label what the mark is called
 */
record ExtremeBar(String label) implements BarFace {

    private static final double[] TICKS_DB = {24, 12, 6, 3, 1, 0.3};

    @Override
    public int mark(int width) {
        return width - 7;
    }

    @Override
    public int railEnd(int mark) {
        return mark;
    }

    @Override
    public int start(int mark) {
        return LEFT;
    }

    @Override
    public int end(int mark, Level level) {
        return column(mark, level.distanceDb());
    }

    private static int column(int mark, double distanceDb) {
        return LEFT + (int) Math.round((mark - LEFT) * BarScale.filled(distanceDb));
    }

    @Override
    public void ticks(Grid grid, int row, int mark) {
        for (double tick : TICKS_DB) {
            String text = tick < 1 ? ".3" : Integer.toString((int) tick);
            grid.write(row, Math.max(LEFT, column(mark, tick) - text.length() + 1), text, Grid.Style.PLAIN);
        }
        grid.write(row, mark - 1, label, Grid.Style.STRONG);
        grid.write(row, mark + 5, "dB", Grid.Style.PLAIN);
    }
}
