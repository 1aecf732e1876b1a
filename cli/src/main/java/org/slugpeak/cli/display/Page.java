package org.slugpeak.cli.display;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.core.peak.Trend;

/** Draws a scene on a grid of any size. One thread at a time. */
final class Page {

    private static final int MARGIN = 1;

    private final Symbols symbols;
    private final List<String> keys;
    private final BlockLetters letters = BlockLetters.load();

    /**
     * A page.
     *
     * @param symbols what the terminal can show
     * @param keys what the keys do, one short phrase each
     */
    Page(Symbols symbols, List<String> keys) {
        this.symbols = symbols;
        this.keys = List.copyOf(keys);
    }

    Grid draw(Scene scene, Aside aside, int width, int height) {
        Grid grid = new Grid(width, height);
        List<String> keyRows = wrap(grid.width() - 2 * MARGIN);
        Layout layout = Layout.of(grid.width(), grid.height(), keyRows.size(), symbols);
        header(grid, scene, aside.status());
        banner(grid, layout, scene, aside.told());
        digits(grid, layout, scene);
        facts(grid, layout, scene);
        Bar.draw(grid, layout, scene, symbols);
        call(grid, layout, scene);
        grid.write(layout.sentence(), MARGIN, SceneWords.sentence(scene), Grid.Style.STRONG);
        for (int i = 0; i < keyRows.size(); i++) {
            grid.write(layout.keys() + i, MARGIN, keyRows.get(i), Grid.Style.PLAIN);
        }
        return grid;
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

    private static void banner(Grid grid, Layout layout, Scene scene, String told) {
        String alarm = SceneWords.alarm(scene);
        if (!alarm.isEmpty()) {
            grid.fill(layout.banner(), Grid.Style.ALERT);
            grid.write(layout.banner(), MARGIN, alarm, Grid.Style.ALERT);
        } else if (!told.isEmpty()) {
            grid.write(layout.banner(), MARGIN, told, Grid.Style.STRONG);
        } else {
            scene.note().ifPresent(note -> grid.write(layout.banner(), MARGIN, note.text(), Grid.Style.PLAIN));
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

    private List<String> wrap(int columns) {
        List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder();
        for (String key : keys) {
            if (row.length() > 0 && row.length() + 2 + key.length() > columns) {
                rows.add(row.toString());
                row.setLength(0);
            }
            row.append(row.length() == 0 ? "" : "  ").append(key);
        }
        if (row.length() > 0) {
            rows.add(row.toString());
        }
        return rows;
    }
}
