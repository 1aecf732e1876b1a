package org.slugpeak.cli.display;

import org.slugpeak.core.peak.Seek;

/** Draws how near the reading is to what is sought, which is a mark that never moves. Stateless. */
final class Bar {

    private static final double[] TICKS_DB = {24, 12, 6, 3, 1, 0.3};
    private static final int LEFT = 1;

    private Bar() {}

    static void draw(Grid grid, Layout layout, Scene scene, Symbols symbols) {
        boolean zero = scene.seek() == Seek.ZERO;
        int mark = zero ? grid.width() / 2 : grid.width() - 7;
        int end = zero
                ? mark
                        + (int) Math.round((mark - LEFT)
                                * BarScale.deflection(
                                        scene.level().value(), scene.level().swing()))
                : LEFT
                        + (int) Math.round(
                                (mark - LEFT) * BarScale.filled(scene.level().distanceDb()));
        boolean past = scene.verdict().call() == Verdict.Call.BACK;
        char filling = past ? symbols.hatched() : symbols.full();
        for (int row = layout.bar(); row < layout.bar() + layout.barRows(); row++) {
            rail(grid, row, zero ? 2 * mark - LEFT : mark, symbols);
            fill(grid, row, zero ? Math.min(mark, end) : LEFT, zero ? Math.max(mark, end) : end, filling);
            grid.put(row, mark, symbols.mark(), Grid.Style.STRONG);
        }
        if (layout.hasTicks()) {
            ticks(grid, layout.bar() + layout.barRows(), mark, scene.seek());
        } else if (!zero) {
            grid.write(layout.bar(), mark + 2, scene.seek() == Seek.DIP ? "LEAST" : "BEST", Grid.Style.STRONG);
        }
    }

    private static void rail(Grid grid, int row, int end, Symbols symbols) {
        for (int column = LEFT; column < end; column++) {
            grid.put(row, column, symbols.rail(), Grid.Style.PLAIN);
        }
    }

    private static void fill(Grid grid, int row, int from, int to, char filling) {
        for (int column = from; column < to; column++) {
            grid.put(row, column, filling, Grid.Style.READING);
        }
    }

    private static void ticks(Grid grid, int row, int mark, Seek seek) {
        if (seek == Seek.ZERO) {
            grid.write(row, LEFT, "-", Grid.Style.PLAIN);
            grid.write(row, mark - 2, "ZERO", Grid.Style.STRONG);
            grid.write(row, 2 * mark - LEFT - 1, "+", Grid.Style.PLAIN);
            return;
        }
        for (double tick : TICKS_DB) {
            String label = tick < 1 ? ".3" : Integer.toString((int) tick);
            int column = LEFT + (int) Math.round((mark - LEFT) * BarScale.filled(tick));
            grid.write(row, Math.max(LEFT, column - label.length() + 1), label, Grid.Style.PLAIN);
        }
        grid.write(row, mark - 1, seek == Seek.DIP ? "LEAST" : "BEST", Grid.Style.STRONG);
        grid.write(row, mark + 5, "dB", Grid.Style.PLAIN);
    }
}
