package org.slugpeak.cli.report;

import java.util.List;
import org.slugpeak.cli.words.ReportPhrase;

/** What each adjuster gained, as bars. */
final class GainChart {

    private static final int WIDTH = 720;
    private static final int ROW = 26;
    private static final int NAMES = 220;
    private static final int FIGURES = 80;

    private GainChart() {}

    /** Empty where no adjuster has a gain. */
    static String svg(List<Turn> turns) {
        List<Turn> shown =
                turns.stream().filter(turn -> !Double.isNaN(turn.gainDb())).toList();
        if (shown.isEmpty()) {
            return "";
        }
        double most =
                Math.max(0.5, shown.stream().mapToDouble(Turn::gainDb).max().orElse(0));
        double least =
                Math.min(0, shown.stream().mapToDouble(Turn::gainDb).min().orElse(0));
        Axis axis = new Axis(least, most, NAMES, WIDTH - FIGURES);
        int bottom = shown.size() * ROW + 8;
        Svg svg = new Svg(WIDTH, bottom + 24, ReportPhrase.GAIN_CHART.of());
        for (double mark : axis.marks(6)) {
            svg.line("grid", axis.pixel(mark), 4, axis.pixel(mark), bottom)
                    .words("mark middle", axis.pixel(mark), bottom + 16, Numbers.plain(mark) + " dB");
        }
        for (int i = 0; i < shown.size(); i++) {
            bar(svg, axis, shown.get(i), 6 + i * ROW);
        }
        return svg.text();
    }

    private static void bar(Svg svg, Axis axis, Turn turn, double top) {
        double zero = axis.pixel(0);
        double end = axis.pixel(turn.gainDb());
        String name = turn.round() == 1 ? turn.adjuster() : ReportPhrase.ROUND.of(turn.adjuster(), turn.round());
        svg.words("label end", NAMES - 8, top + 14, Numbers.shortened(name, 30))
                .box(turn.gainDb() < 0 ? "bar loss" : "bar", Math.min(zero, end), top, Math.abs(end - zero), ROW - 8.0)
                .words("label", Math.max(zero, end) + 6, top + 14, Gain.signed(turn.gainDb()));
    }
}
