package org.slugpeak.cli.display;

import java.util.List;
import org.slugpeak.cli.moment.Act;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentWords;

/**
 * Draws the panel of the act: its sign, and its word beside it, as large as the room allows. Where the whole word has no room in large
 * letters, its figures are left out, then all of it but the sign, which is never left out. One thread at a time.
 */
final class WordPanel {

    /** Columns of dots from the sign to the word: less than a blank, so that the word gains. */
    private static final int SIGN_PITCH = BlockLetters.PITCH + 1;

    private final Symbols symbols;
    private final BlockLetters letters;

    WordPanel(Symbols symbols, BlockLetters letters) {
        this.symbols = symbols;
        this.letters = letters;
    }

    void draw(Grid grid, int top, int rows, int scale, Moment moment, boolean flashes) {
        Act act = moment.act();
        Panel panel = Panel.of(act);
        panel.draw(grid, top, rows, symbols, flashes);
        int left = Panel.edge(grid.width()) + 1;
        int room = grid.width() - 2 * left;
        String word = MomentWords.word(moment);
        for (String line : List.of(word, act.word(), "")) {
            int fitting = fitting(line, scale, room);
            if (fitting > 0) {
                int row = top + (rows - BlockLetters.rows(fitting, symbols)) / 2;
                Grid.Style style = panel.style(flashes);
                String sign = String.valueOf(Signs.shape(act));
                letters.draw(grid, row, left, sign, fitting, symbols, style);
                letters.draw(grid, row, left + fitting * SIGN_PITCH, line, fitting, symbols, style);
                if (line.isEmpty()) {
                    grid.write(top + rows / 2, left + SIGN_PITCH + 1, word, style);
                }
                return;
            }
        }
        grid.write(top, left, Signs.plain(act) + " " + word, panel.style(flashes));
    }

    private static int fitting(String line, int scale, int room) {
        int fitting = scale;
        while (fitting > 0 && fitting * SIGN_PITCH + BlockLetters.columns(line, fitting) > room) {
            fitting--;
        }
        return fitting;
    }
}
