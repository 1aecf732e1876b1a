package org.slugpeak.cli.display;

import java.util.List;
import org.slugpeak.core.peak.Trend;

/** Draws a scene on a grid of any size. One thread at a time. */
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

    Grid draw(Scene scene, Aside aside, int width, int height) {
        Grid grid = new Grid(width, height);
        List<String> keyRows = KeyRows.fitting(keys, grid.width() - 2 * MARGIN, grid.height());
        Banner banner = Banner.of(scene, aside.told(), keys, grid.width() - 2 * MARGIN);
        int room = Layout.bannerRows(grid.height(), banner.needed());
        Layout layout = Layout.of(grid.width(), grid.height(), room, keyRows.size(), symbols);
        header(grid, scene, aside.status());
        banner.draw(grid, layout.banner(), room, MARGIN);
        boolean asks = scene.toDo().isPresent() && SceneWords.alarm(scene).isEmpty();
        if (asks) {
            request(grid, scene, layout.banner() + room, grid.height() - keyRows.size());
        } else {
            level(grid, layout, scene);
        }
        for (int i = 0; i < keyRows.size(); i++) {
            grid.write(layout.keys() + i, MARGIN, keyRows.get(i), Grid.Style.PLAIN);
        }
        return grid;
    }

    private void level(Grid grid, Layout layout, Scene scene) {
        digits(grid, layout, scene);
        facts(grid, layout, scene);
        Bar.draw(grid, layout, scene, symbols);
        call(grid, layout, scene);
        grid.write(layout.sentence(), MARGIN, SceneWords.sentence(scene), Grid.Style.STRONG);
    }

    /** What the user is asked to do takes the place of the large reading, which needs no attention meanwhile. */
    private void request(Grid grid, Scene scene, int top, int end) {
        String text = SceneWords.sentence(scene);
        List<String> words = Wrapped.text(text, grid.width() - 2 * MARGIN);
        boolean roomy = end - top >= ROWS_FOR_WORDS_BELOW;
        int readingRow = end - 1 - (roomy ? words.size() : 0);
        board.draw(grid, top, readingRow - top, MARGIN, text);
        String reading = SceneWords.reading(scene) + "  " + arrow(scene) + " " + SceneWords.trend(scene);
        grid.write(readingRow, MARGIN, reading, Grid.Style.STRONG);
        for (int i = 0; roomy && i < words.size(); i++) {
            grid.write(readingRow + 1 + i, MARGIN, words.get(i), Grid.Style.PLAIN);
        }
    }

    private void header(Grid grid, Scene scene, String status) {
        String left = scene.adjuster().isEmpty()
                ? scene.source()
                : scene.adjuster() + " " + symbols.dot() + " " + scene.source();
        grid.write(0, MARGIN, left, Grid.Style.PLAIN);
        int column = grid.width() - MARGIN - status.length();
        if (column > MARGIN) {
            grid.write(0, column - 1, " " + status, Grid.Style.PLAIN);
        }
    }

    private void digits(Grid grid, Layout layout, Scene scene) {
        Figures.Figure figure = SceneWords.reading(scene);
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

    private void facts(Grid grid, Layout layout, Scene scene) {
        String facts = SceneWords.facts(scene);
        grid.write(layout.facts(), MARGIN, facts, Grid.Style.PLAIN);
        String trend = arrow(scene) + " " + SceneWords.trend(scene);
        int column = grid.width() - MARGIN - trend.length();
        if (layout.callScale() > 0 && column > facts.length() + 2 * MARGIN) {
            grid.write(layout.facts(), column, trend, Grid.Style.STRONG);
        }
    }

    private void call(Grid grid, Layout layout, Scene scene) {
        boolean alarm = !SceneWords.alarm(scene).isEmpty();
        Grid.Style style = alarm ? Grid.Style.ALERT : Grid.Style.STRONG;
        String call = SceneWords.call(scene);
        int rows = layout.sentence() - layout.call();
        for (int row = 0; alarm && row < rows; row++) {
            grid.fill(layout.call() + row, style);
        }
        int room = grid.width() - 2 * MARGIN;
        String withArrow = blockArrow(scene) + " " + call;
        String line = alarm || BlockLetters.columns(withArrow, 1) > room ? call : withArrow;
        int scale = layout.callScale();
        while (scale > 0 && BlockLetters.columns(line, scale) > room) {
            scale--;
        }
        if (scale > 0) {
            letters.draw(grid, layout.call(), MARGIN, line, scale, symbols, style);
        } else {
            String words = arrow(scene) + " " + SceneWords.trend(scene) + "   " + call;
            grid.write(layout.call(), MARGIN, words, style);
        }
    }

    private char arrow(Scene scene) {
        return switch (scene.level().trend()) {
            case RISING -> symbols.up();
            case FALLING -> symbols.down();
            case STEADY -> symbols.level();
        };
    }

    private static char blockArrow(Scene scene) {
        Trend trend = scene.level().trend();
        return trend == Trend.RISING ? '^' : trend == Trend.FALLING ? 'v' : '=';
    }
}
