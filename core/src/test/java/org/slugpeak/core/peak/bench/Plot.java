package org.slugpeak.core.peak.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Draws, for every family, how far below the maximum the pass was told: a bar for each watcher and a tick for the bound. */
final class Plot {

    private static final int LEFT = 210;
    private static final int ROW = 46;
    private static final double PIXELS_PER_DB = 220;
    private static final double MOST_DB = 3;
    private static final List<String> COLOURS = List.of("#1b6ca8", "#b0b0b0", "#8d8d8d", "#6a6a6a");

    private final StringBuilder svg = new StringBuilder();
    private int rows;

    void row(String name, double boundDb, double... flaggedDb) {
        int top = 60 + rows++ * ROW;
        text(10, top + 22, name);
        for (int i = 0; i < flaggedDb.length; i++) {
            double shown = Double.isNaN(flaggedDb[i]) ? 0 : Math.min(flaggedDb[i], MOST_DB);
            svg.append(String.format(
                    Locale.ROOT,
                    "<rect x='%d' y='%d' width='%.1f' height='8' fill='%s'/>%n",
                    LEFT,
                    top + i * 9,
                    Math.max(1, shown * PIXELS_PER_DB),
                    COLOURS.get(i)));
        }
        double x = LEFT + boundDb * PIXELS_PER_DB;
        svg.append(String.format(
                Locale.ROOT,
                "<line x1='%.1f' y1='%d' x2='%.1f' y2='%d' stroke='black' stroke-width='2'/>%n",
                x,
                top - 3,
                x,
                top + 38));
    }

    private void text(int x, int y, String words) {
        svg.append(String.format(Locale.ROOT, "<text x='%d' y='%d'>%s</text>%n", x, y, words));
    }

    void write(Path file, List<String> watchers) throws IOException {
        text(
                10,
                20,
                "How far below the maximum the pass was told, median, dB (full width 3 dB); black tick: bound on paper");
        for (int i = 0; i < watchers.size(); i++) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<rect x='%d' y='30' width='12' height='10' fill='%s'/>%n",
                    LEFT + i * 160,
                    COLOURS.get(i)));
            text(LEFT + 18 + i * 160, 40, watchers.get(i));
        }
        String head = String.format(
                Locale.ROOT,
                "<svg xmlns='http://www.w3.org/2000/svg' width='900' height='%d' font-family='sans-serif' font-size='12'>%n",
                70 + rows * ROW);
        Files.createDirectories(file.getParent());
        Files.writeString(file, head + "<rect width='100%' height='100%' fill='white'/>\n" + svg + "</svg>\n");
    }
}
