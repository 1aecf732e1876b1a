package org.slugpeak.cli.display;

import java.util.List;
import org.slugpeak.cli.moment.Figures;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentWords;
import org.slugpeak.core.peak.Trend;

/** Draws a moment on a grid of any size. One thread at a time. */
final class Page {

    private static final int MARGIN = 1;
    private static final int ROWS_FOR_WORDS_BELOW = 12;

    private final Symbols symbols;
    private final List<String> keys;
    private final BlockLetters letters = BlockLetters.load();
    private final Board board;

    /**
     * A page.
     *
     * @param symbols what the terminal can show
     * @param keys what the keys do, one short phrase each
     */
    Page(Symbols symbols, List<String> keys) {
        this.symbols = symbols;
        this.keys = List.copyOf(keys);
        board = new Board(symbols, letters);
    }

    Grid draw(Moment moment, Aside aside, int width, int height) {
        Grid grid = new Grid(width, height);
        List<String> keyRows = KeyRows.fitting(keys, grid.width() - 2 * MARGIN, grid.height());
        Banner banner = Banner.of(moment, aside.told(), keys, grid.width() - 2 * MARGIN);
        int room = Layout.bannerRows(grid.height(), banner.needed());
        Layout layout = Layout.of(grid.width(), grid.height(), room, keyRows.size(), symbols);
        header(grid, moment, aside.status());
        banner.draw(grid, layout.banner(), room, MARGIN);
        boolean asks = moment.toDo().isPresent() && MomentWords.alarm(moment).isEmpty();
        if (asks) {
            request(grid, moment, layout.banner() + room, grid.height() - keyRows.size());
        } else {
            level(grid, layout, moment);
        }
        for (int i = 0; i < keyRows.size(); i++) {
            grid.write(layout.keys() + i, MARGIN, keyRows.get(i), Grid.Style.PLAIN);
        }
        return grid;
    }

    private void level(Grid grid, Layout layout, Moment moment) {
        digits(grid, layout, moment);
        facts(grid, layout, moment);
        Bar.draw(grid, layout, moment, symbols);
        call(grid, layout, moment);
        grid.write(layout.sentence(), MARGIN, MomentWords.sentence(moment), Grid.Style.STRONG);
    }

    /** What the user is asked to do takes the place of the large reading, which needs no attention meanwhile. */
    private void request(Grid grid, Moment moment, int top, int end) {
        String text = MomentWords.sentence(moment);
        List<String> words = Wrapped.text(text, grid.width() - 2 * MARGIN);
        boolean roomy = end - top >= ROWS_FOR_WORDS_BELOW;
        int readingRow = end - 1 - (roomy ? words.size() : 0);
        board.draw(grid, top, readingRow - top, MARGIN, text);
        String reading = MomentWords.reading(moment) + "  " + arrow(moment) + " " + MomentWords.trend(moment);
        grid.write(readingRow, MARGIN, reading, Grid.Style.STRONG);
        for (int i = 0; roomy && i < words.size(); i++) {
            grid.write(readingRow + 1 + i, MARGIN, words.get(i), Grid.Style.PLAIN);
        }
    }

    private void header(Grid grid, Moment moment, String status) {
        String left = moment.adjuster().isEmpty()
                ? moment.source()
                : moment.adjuster() + " " + symbols.dot() + " " + moment.source();
        grid.write(0, MARGIN, left, Grid.Style.PLAIN);
        int column = grid.width() - MARGIN - status.length();
        if (column > MARGIN) {
            grid.write(0, column - 1, " " + status, Grid.Style.PLAIN);
        }
    }

    private void digits(Grid grid, Layout layout, Moment moment) {
        Figures.Figure figure = MomentWords.reading(moment);
        int room = layout.digitScale() == 0 ? 0 : (grid.width() - MARGIN) / (layout.digitScale() * BlockLetters.PITCH);
        String text = figure.digits().indexOf('.') < 0 ? figure.digits() : cut(figure.digits(), room);
        if (layout.digitScale() == 0 || text.length() > room) {
            grid.write(layout.digits(), MARGIN, figure.toString(), Grid.Style.STRONG);
            return;
        }
        letters.draw(grid, layout.digits(), MARGIN, text, layout.digitScale(), symbols, Grid.Style.READING);
        int end = MARGIN + BlockLetters.columns(text, layout.digitScale()) + 1;
        int bottom = layout.digits() + BlockLetters.rows(layout.digitScale(), symbols) - 1;
        grid.write(bottom, end, figure.unit(), Grid.Style.STRONG);
    }

    private static String cut(String digits, int room) {
        return digits.length() > room && digits.indexOf('.') < room ? digits.substring(0, room) : digits;
    }

    private void facts(Grid grid, Layout layout, Moment moment) {
        String facts = MomentWords.facts(moment);
        grid.write(layout.facts(), MARGIN, facts, Grid.Style.PLAIN);
        String trend = arrow(moment) + " " + MomentWords.trend(moment);
        int column = grid.width() - MARGIN - trend.length();
        if (layout.callScale() > 0 && column > facts.length() + 2 * MARGIN) {
            grid.write(layout.facts(), column, trend, Grid.Style.STRONG);
        }
    }

    private void call(Grid grid, Layout layout, Moment moment) {
        boolean alarm = !MomentWords.alarm(moment).isEmpty();
        Grid.Style style = alarm ? Grid.Style.ALERT : Grid.Style.STRONG;
        String call = MomentWords.word(moment);
        int rows = layout.sentence() - layout.call();
        for (int row = 0; alarm && row < rows; row++) {
            grid.fill(layout.call() + row, style);
        }
        int room = grid.width() - 2 * MARGIN;
        String withArrow = blockArrow(moment) + " " + call;
        String line = alarm || BlockLetters.columns(withArrow, 1) > room ? call : withArrow;
        int scale = layout.callScale();
        while (scale > 0 && BlockLetters.columns(line, scale) > room) {
            scale--;
        }
        if (scale > 0) {
            letters.draw(grid, layout.call(), MARGIN, line, scale, symbols, style);
        } else {
            String words = arrow(moment) + " " + MomentWords.trend(moment) + "   " + call;
            grid.write(layout.call(), MARGIN, words, style);
        }
    }

    private char arrow(Moment moment) {
        return switch (moment.level().trend()) {
            case RISING -> symbols.up();
            case FALLING -> symbols.down();
            case STEADY -> symbols.level();
        };
    }

    private static char blockArrow(Moment moment) {
        Trend trend = moment.level().trend();
        return trend == Trend.RISING ? '^' : trend == Trend.FALLING ? 'v' : '=';
    }
}
