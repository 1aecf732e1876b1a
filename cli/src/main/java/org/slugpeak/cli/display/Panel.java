package org.slugpeak.cli.display;

import org.slugpeak.cli.moment.Act;

/**
 * The ground on which the word of an act stands, from edge to edge of the window: seen from further away than any letter. Each has a colour, and
 * where there is none it is told apart by what its edges are made of. Immutable; any thread may use it.
 */
enum Panel {
    /** Go on: the terminal's own ground, which asks for nothing. */
    OPEN(Grid.Style.STRONG),
    /** The hand goes the wrong way. */
    TURN_ROUND(Grid.Style.TURN_ROUND),
    /** The hand is to rest. */
    REST(Grid.Style.REST),
    /** It is recorded. */
    DONE(Grid.Style.DONE),
    /** Something is asked or has to be judged. */
    ASK(Grid.Style.ASK),
    /** What is read cannot be relied on. */
    ALARM(Grid.Style.ALERT);

    private static final int WIDE_FROM_COLUMNS = 60;

    private final Grid.Style style;

    Panel(Grid.Style style) {
        this.style = style;
    }

    static Panel of(Act act) {
        return switch (act) {
            case WAIT, TURN, END -> OPEN;
            case OTHER_WAY, BACK -> TURN_ROUND;
            case STOP -> REST;
            case HELD -> DONE;
            case HANDS_OFF, DO, TWO_PEAKS, NO_PEAK -> ASK;
            case OVERLOAD, NO_LINK -> ALARM;
        };
    }

    /** Of the letters; while it flashes, the other way round. */
    Grid.Style style(boolean flashes) {
        return flashes ? this == OPEN ? Grid.Style.ASK : Grid.Style.FLASH : style;
    }

    /** How many columns each edge takes. */
    static int edge(int width) {
        return width < WIDE_FROM_COLUMNS ? 1 : 2;
    }

    private char edge(Symbols symbols) {
        return switch (this) {
            case OPEN -> ' ';
            case TURN_ROUND -> '<';
            case REST -> symbols.full();
            case DONE -> '+';
            case ASK -> '?';
            case ALARM -> symbols.hatched();
        };
    }

    void draw(Grid grid, int top, int rows, Symbols symbols, boolean flashes) {
        int edge = edge(grid.width());
        for (int row = top; row < top + rows; row++) {
            grid.fill(row, style(flashes));
            for (int column = 0; column < edge; column++) {
                grid.put(row, column, edge(symbols), style(flashes));
                grid.put(row, grid.width() - 1 - column, edge(symbols), style(flashes));
            }
        }
    }
}
