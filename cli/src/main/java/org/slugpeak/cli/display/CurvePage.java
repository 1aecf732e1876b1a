package org.slugpeak.cli.display;

import java.util.List;
import org.slugpeak.cli.moment.CurveMoment;
import org.slugpeak.cli.moment.CurveMomentKeeper;
import org.slugpeak.cli.moment.Figures;
import org.slugpeak.cli.words.ScreenPhrase;

/**
 * Draws the moment of a response curve on a grid of any size: the frequency that is asked for and the reading in block digits, which
 * point it is, one sentence that says what to do, the keys at the foot. One thread at a time.
 */
final class CurvePage {

    private static final int MARGIN = 1;

    /** Header, banner, sentence. */
    private static final int WORDS = 3;

    private static final int FIGURES = 2;
    private static final int CHARACTERS = 6;

    private final Symbols symbols;
    private final List<KeyHint> keys;
    private final BlockLetters letters = BlockLetters.load();
    private final Board board;

    CurvePage(Symbols symbols, List<KeyHint> keys) {
        this.symbols = symbols;
        this.keys = List.copyOf(keys);
        board = new Board(symbols, letters);
    }

    Grid draw(CurveMoment moment, Aside aside, int width, int height) {
        Grid grid = new Grid(width, height);
        if (aside.keys()) {
            KeysPage.draw(grid, keys);
            return grid;
        }
        List<String> phrases = keys.stream().map(KeyHint::phrase).toList();
        List<String> keyRows = Foot.fitting(phrases, grid.width() - 2 * MARGIN, grid.height());
        int end = grid.height() - keyRows.size();
        header(grid, moment);
        banner(grid, moment, aside.told());
        if (moment.asks()) {
            board.draw(grid, 2, end - 3, MARGIN, moment.todo());
            grid.write(end - 1, MARGIN, ScreenPhrase.READING.of(reading(moment)), Grid.Style.STRONG);
        } else {
            figures(grid, moment, end);
        }
        for (int i = 0; i < keyRows.size(); i++) {
            grid.write(end + i, MARGIN, keyRows.get(i), Grid.Style.PLAIN);
        }
        return grid;
    }

    private void header(Grid grid, CurveMoment moment) {
        String title = ScreenPhrase.RESPONSE_CURVE.of();
        grid.write(0, MARGIN, title + " " + symbols.dot() + " " + moment.source(), Grid.Style.PLAIN);
        String point = moment.point();
        grid.write(0, grid.width() - MARGIN - point.length() - 1, " " + point, Grid.Style.STRONG);
    }

    private static void banner(Grid grid, CurveMoment moment, String told) {
        if (moment.alarm().isPresent()) {
            grid.fill(1, Grid.Style.ALERT);
            grid.write(1, MARGIN, moment.alarm().get(), Grid.Style.ALERT);
        } else {
            grid.write(1, MARGIN, told.isEmpty() ? moment.note() : told, Grid.Style.PLAIN);
        }
    }

    private void figures(Grid grid, CurveMoment moment, int end) {
        List<String> sentence = Wrapped.text(moment.todo(), grid.width() - 2 * MARGIN);
        int room = end - WORDS - sentence.size() + 1;
        int scale = scale(grid.width(), room / FIGURES);
        int rows = scale == 0 ? 1 : BlockLetters.rows(scale, symbols);
        int gap = Math.max(0, room - FIGURES * rows) / (FIGURES + 1);
        int first = WORDS - 1 + gap;
        figure(grid, first, scale, new Figures.Figure(CurveMomentKeeper.kHz(moment.frequencyHz()), "kHz"));
        figure(grid, first + rows + Math.max(gap, scale == 0 ? 1 : 0), scale, reading(moment));
        for (int i = 0; i < sentence.size(); i++) {
            grid.write(end - sentence.size() + i, MARGIN, sentence.get(i), Grid.Style.STRONG);
        }
    }

    private static Figures.Figure reading(CurveMoment moment) {
        return Figures.of(moment.reading(), moment.reading(), moment.unit());
    }

    /** The largest that both figures have room for; 0 for plain letters. */
    private int scale(int width, int rows) {
        int scale = (width - 2 * MARGIN) / BlockLetters.columns("0".repeat(CHARACTERS), 1);
        while (scale > 0 && BlockLetters.rows(scale, symbols) > rows) {
            scale--;
        }
        return scale;
    }

    private void figure(Grid grid, int row, int scale, Figures.Figure figure) {
        String digits = figure.digits();
        if (scale == 0 || BlockLetters.columns(digits, scale) > grid.width() - MARGIN) {
            grid.write(row, MARGIN, figure.toString(), Grid.Style.STRONG);
            return;
        }
        letters.draw(grid, row, MARGIN, digits, scale, symbols, Grid.Style.READING);
        int column = MARGIN + BlockLetters.columns(digits, scale) + 1;
        grid.write(row + BlockLetters.rows(scale, symbols) - 1, column, figure.unit(), Grid.Style.STRONG);
    }
}
