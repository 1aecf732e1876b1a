package org.slugpeak.cli.display;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slugpeak.cli.report.Html;

/** A page of cells as a picture: what a terminal with 256 colours shows. Block characters become boxes, so that no font matters. */
final class GridPicture {

    private static final double CELL_WIDTH = 8.5;
    private static final double CELL_HEIGHT = 18;
    private static final double MARGIN = 10;
    private static final double BASELINE = 13.5;

    /** The letters and the ground of a usual dark terminal. */
    private static final String LETTERS = "#d8d8d8";

    private static final String GROUND = "#101010";

    /** What part of the cell a block character fills: from the left, from the top, width, height, how dense. */
    private static final Map<Character, double[]> BLOCKS = Map.of(
            '\u2588', new double[] {0, 0, 1, 1, 1},
            '\u2580', new double[] {0, 0, 1, 0.5, 1},
            '\u2584', new double[] {0, 0.5, 1, 0.5, 1},
            '\u2592', new double[] {0, 0, 1, 1, 0.5},
            '\u2503', new double[] {0.4, 0, 0.2, 1, 1});

    private static final Pattern TOGETHER = Pattern.compile("\\S+( \\S+)*");

    private final Grid grid;
    private final StringBuilder text = new StringBuilder();

    private GridPicture(Grid grid) {
        this.grid = grid;
    }

    static String of(Grid grid, String title) {
        return new GridPicture(grid).draw(title);
    }

    private String draw(String title) {
        double width = grid.width() * CELL_WIDTH + 2 * MARGIN;
        double height = grid.height() * CELL_HEIGHT + 2 * MARGIN;
        add("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" role=\"img\">%n", width, height);
        add("<title>%s</title>%n", Html.escape(title));
        add("<rect width=\"%.0f\" height=\"%.0f\" rx=\"6\" fill=\"%s\"/>%n", width, height, GROUND);
        add("<g font-family=\"DejaVu Sans Mono, Menlo, Consolas, monospace\" font-size=\"14\""
                + " shape-rendering=\"crispEdges\">%n");
        for (int row = 0; row < grid.height(); row++) {
            row(row);
        }
        return text + "</g>\n</svg>\n";
    }

    private void row(int row) {
        int from = 0;
        for (int column = 1; column <= grid.width(); column++) {
            if (column == grid.width() || !isLike(row, from, column)) {
                run(row, from, column);
                from = column;
            }
        }
    }

    /** Letters of a style stand together; a block only with the same block. */
    private boolean isLike(int row, int one, int other) {
        char first = grid.at(row, one);
        char second = grid.at(row, other);
        boolean together = (BLOCKS.containsKey(first) || BLOCKS.containsKey(second)) ? first == second : true;
        return together && grid.styleAt(row, one) == grid.styleAt(row, other);
    }

    private void run(int row, int from, int to) {
        Grid.Style style = grid.styleAt(row, from);
        double left = MARGIN + from * CELL_WIDTH;
        double top = MARGIN + row * CELL_HEIGHT;
        double width = (to - from) * CELL_WIDTH;
        Look.Inks inks = Look.COLOURS.get(style);
        if (inks != null) {
            box(left, top, width, CELL_HEIGHT, colour(inks.ground()), 1);
        }
        String letters = inks == null ? LETTERS : colour(inks.letters());
        double[] block = BLOCKS.get(grid.at(row, from));
        if (block != null) {
            double first = left + block[0] * CELL_WIDTH;
            double blockWidth = block[2] < 1 ? block[2] * CELL_WIDTH : width;
            box(first, top + block[1] * CELL_HEIGHT, blockWidth, block[3] * CELL_HEIGHT, letters, block[4]);
        } else {
            words(grid.line(row).substring(from, to), left, top, style == Grid.Style.STRONG, letters);
        }
    }

    private void box(double left, double top, double width, double height, String fill, double density) {
        String thin = density < 1 ? String.format(Locale.ROOT, " fill-opacity=\"%.1f\"", density) : "";
        add(
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\"%s/>%n",
                left, top, width, height, fill, thin);
    }

    /** What stands together is as wide as its cells, whatever the font; several blanks would become one. */
    private void words(String run, double left, double top, boolean bold, String fill) {
        Matcher together = TOGETHER.matcher(run);
        while (together.find()) {
            add(
                    "<text x=\"%.1f\" y=\"%.1f\" textLength=\"%.1f\" lengthAdjust=\"spacingAndGlyphs\" fill=\"%s\"%s>%s</text>%n",
                    left + together.start() * CELL_WIDTH,
                    top + BASELINE,
                    together.group().length() * CELL_WIDTH,
                    fill,
                    bold ? " font-weight=\"bold\"" : "",
                    Html.escape(together.group()));
        }
    }

    /** Of the 256: the colour cube of six steps each, 0, 95, 135, 175, 215 and 255 (xterm, 256colres.h). */
    private static String colour(int of256) {
        int cube = of256 - Look.BLACK;
        return String.format(Locale.ROOT, "#%02x%02x%02x", step(cube / 36), step(cube / 6 % 6), step(cube % 6));
    }

    private static int step(int sixth) {
        return sixth == 0 ? 0 : 55 + 40 * sixth;
    }

    private void add(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values));
    }
}
