package org.slugpeak.cli.display;

import java.util.List;
import org.slugpeak.cli.moment.Figures;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentWords;

/** Draws a moment on a grid of any size. One thread at a time. */
final class Page {

    private static final int MARGIN = 1;
    private static final int ROWS_FOR_WORDS_BELOW = 12;

    /** In a smaller window a remark takes one row, and leaves what is asked the room to be large. */
    private static final int ROWS_FOR_REMARKS = 16;

    private static final int ROWS_FOR_LARGE_READING_BELOW = 20;

    private final Symbols symbols;
    private final List<KeyHint> keys;
    private final BlockLetters letters = BlockLetters.load();
    private final Board board;
    private final WordPanel panel;

    /**
     * A page.
     *
     * @param symbols what the terminal can show
     * @param keys what the keys do
     */
    Page(Symbols symbols, List<KeyHint> keys) {
        this.symbols = symbols;
        this.keys = List.copyOf(keys);
        board = new Board(symbols, letters);
        panel = new WordPanel(symbols, letters);
    }

    Grid draw(Moment moment, Aside aside, int width, int height) {
        Grid grid = new Grid(width, height);
        if (aside.cover().isPresent()) {
            aside.cover().get().draw(grid, symbols);
            return grid;
        }
        List<String> foot = Foot.fitting(Foot.phrases(keys, moment), grid.width() - 2 * MARGIN, grid.height());
        Banner banner = Banner.of(moment, aside.told(), keys, grid.width() - 2 * MARGIN);
        boolean asks = moment.toDo().isPresent() && MomentWords.alarm(moment).isEmpty();
        boolean onlyRemarks = asks && moment.warning().isEmpty() && grid.height() < ROWS_FOR_REMARKS;
        int room = onlyRemarks ? 1 : Layout.bannerRows(grid.height(), banner.needed());
        Layout layout = Layout.of(grid.width(), grid.height(), room, foot.size(), symbols);
        header(grid, moment, aside.status());
        banner.draw(grid, layout.banner(), room, MARGIN);
        if (asks) {
            request(
                    grid,
                    moment,
                    aside.flashes(),
                    layout.banner() + Math.min(room, banner.used()),
                    grid.height() - foot.size());
        } else {
            level(grid, layout, moment, aside.flashes());
        }
        for (int i = 0; i < foot.size(); i++) {
            grid.write(layout.keys() + i, MARGIN, foot.get(i), Grid.Style.PLAIN);
        }
        return grid;
    }

    private void level(Grid grid, Layout layout, Moment moment, boolean flashes) {
        Figures.Figure reading = MomentWords.reading(moment);
        digits(grid, layout.digits(), layout.digitScale(), reading);
        if (moment.link().isEmpty()) {
            facts(grid, layout, moment);
            Bar.draw(grid, layout, moment, symbols);
        }
        panel.draw(grid, layout.call(), layout.sentence() - layout.call(), layout.callScale(), moment, flashes);
        if (MomentWords.alarm(moment).isEmpty()) {
            List<String> rows = Wrapped.text(MomentWords.sentence(moment), grid.width() - 2 * MARGIN);
            int room = Math.max(1, layout.keys() - layout.sentence());
            for (int i = 0; i < Math.min(rows.size(), room); i++) {
                grid.write(layout.sentence() + i, MARGIN, rows.get(i), Grid.Style.STRONG);
            }
        }
    }

    /** What the user is asked to do takes the middle of the page; the reading stays below it, and what was asked in full. */
    private void request(Grid grid, Moment moment, boolean flashes, int top, int end) {
        String text = MomentWords.sentence(moment);
        List<String> words = Wrapped.text(text, grid.width() - 2 * MARGIN);
        boolean roomy = end - top >= ROWS_FOR_WORDS_BELOW;
        int scale = end - top >= ROWS_FOR_LARGE_READING_BELOW ? 1 : 0;
        int readingRows = scale == 0 ? 1 : BlockLetters.rows(scale, symbols);
        int readingRow = end - readingRows - (roomy ? words.size() : 0);
        board.draw(grid, top, readingRow - top, moment, flashes, roomy);
        digits(grid, readingRow, scale, MomentWords.reading(moment));
        trend(grid, readingRow + readingRows - 1, moment);
        for (int i = 0; roomy && i < words.size(); i++) {
            grid.write(readingRow + readingRows + i, MARGIN, words.get(i), Grid.Style.STRONG);
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

    private void digits(Grid grid, int row, int scale, Figures.Figure figure) {
        int room = scale == 0 ? 0 : (grid.width() - MARGIN) / (scale * BlockLetters.PITCH);
        String text = figure.digits().indexOf('.') < 0 ? figure.digits() : cut(figure.digits(), room);
        if (scale == 0 || text.length() > room) {
            grid.write(row, MARGIN, figure.toString(), Grid.Style.STRONG);
            return;
        }
        letters.draw(grid, row, MARGIN, text, scale, symbols, Grid.Style.READING);
        int end = MARGIN + BlockLetters.columns(text, scale) + 1;
        int bottom = row + BlockLetters.rows(scale, symbols) - 1;
        grid.write(bottom, end, figure.unit(), Grid.Style.STRONG);
    }

    private static String cut(String digits, int room) {
        return digits.length() > room && digits.indexOf('.') < room ? digits.substring(0, room) : digits;
    }

    private void facts(Grid grid, Layout layout, Moment moment) {
        String facts = MomentWords.facts(moment);
        int room = grid.width() - 2 * MARGIN - trend(moment).length() - MARGIN;
        grid.write(layout.facts(), MARGIN, facts, Grid.Style.PLAIN);
        if (facts.length() <= room) {
            trend(grid, layout.facts(), moment);
        } else if (layout.digitScale() == 0) {
            trend(grid, layout.digits(), moment);
        }
    }

    /** Which way the reading goes has a small place of its own: it is no order to the hand. */
    private void trend(Grid grid, int row, Moment moment) {
        String trend = trend(moment);
        grid.write(row, grid.width() - MARGIN - trend.length(), trend, Grid.Style.PLAIN);
    }

    private String trend(Moment moment) {
        String words = MomentWords.trend(moment);
        if (words.isEmpty() || !MomentWords.alarm(moment).isEmpty()) {
            return "";
        }
        char arrow = switch (moment.level().trend()) {
            case RISING -> symbols.up();
            case FALLING -> symbols.down();
            case STEADY -> symbols.level();
        };
        return arrow + " " + words;
    }
}
