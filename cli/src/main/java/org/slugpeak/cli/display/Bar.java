package org.slugpeak.cli.display;

import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Moment;

/** Draws how near the reading is to what is sought, which is a mark that never moves. Stateless. */
final class Bar {

    private Bar() {}

    static void draw(Grid grid, Layout layout, Moment moment, Symbols symbols) {
        BarFace face = BarFace.of(moment.seek());
        int mark = face.mark(grid.width());
        int end = face.end(mark, moment.level());
        boolean past = moment.act() == Act.BACK;
        char filling = past ? symbols.hatched() : symbols.full();
        for (int row = layout.bar(); row < layout.bar() + layout.barRows(); row++) {
            rail(grid, row, face.railEnd(mark), symbols);
            fill(grid, row, Math.min(face.start(mark), end), Math.max(face.start(mark), end), filling);
            grid.put(row, mark, symbols.mark(), Grid.Style.STRONG);
        }
        if (layout.hasTicks()) {
            face.ticks(grid, layout.bar() + layout.barRows(), mark);
        } else {
            grid.write(layout.bar(), mark + 2, face.label(), Grid.Style.STRONG);
        }
    }

    private static void rail(Grid grid, int row, int end, Symbols symbols) {
        for (int column = BarFace.LEFT; column < end; column++) {
            grid.put(row, column, symbols.rail(), Grid.Style.PLAIN);
        }
    }

    private static void fill(Grid grid, int row, int from, int to, char filling) {
        for (int column = from; column < to; column++) {
            grid.put(row, column, filling, Grid.Style.READING);
        }
    }
}
