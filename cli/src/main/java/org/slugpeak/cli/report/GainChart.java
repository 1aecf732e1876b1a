package org.slugpeak.cli.report;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slugpeak.cli.words.ReportPhrase;

/** What each adjuster gained in all its rounds, as bars. */
final class GainChart {

    private static final int WIDTH = 720;
    private static final int ROW = 26;
    private static final int NAMES = 220;
    private static final int FIGURES = 80;

    private GainChart() {}

    /** Empty where no adjuster has a gain. */
    static String svg(List<Turn> turns) {
        Map<String, Double> gains = new LinkedHashMap<>();
        turns.stream()
                .filter(turn -> !Double.isNaN(turn.gainDb()))
                .forEach(turn -> gains.merge(turn.adjuster(), turn.gainDb(), Double::sum));
        if (gains.isEmpty()) {
            return "";
        }
        Axis axis = new Axis(
                Math.min(0, Collections.min(gains.values())),
                Math.max(0.5, Collections.max(gains.values())),
                NAMES,
                WIDTH - FIGURES);
        int bottom = gains.size() * ROW + 8;
        Svg svg = new Svg(WIDTH, bottom + 24, ReportPhrase.GAIN_CHART.of());
        for (double mark : axis.marks(6)) {
            svg.line("grid", axis.pixel(mark), 4, axis.pixel(mark), bottom)
                    .words("mark middle", axis.pixel(mark), bottom + 16, Numbers.plain(mark) + " dB");
        }
        double top = 6;
        for (Map.Entry<String, Double> gain : gains.entrySet()) {
            bar(svg, axis, gain.getKey(), gain.getValue(), top);
            top += ROW;
        }
        return svg.text();
    }

    private static void bar(Svg svg, Axis axis, String adjuster, double gainDb, double top) {
        double zero = axis.pixel(0);
        double end = axis.pixel(gainDb);
        svg.words("label end", NAMES - 8.0, top + 14, Numbers.shortened(adjuster, 30))
                .box(gainDb < 0 ? "bar loss" : "bar", Math.min(zero, end), top, Math.abs(end - zero), ROW - 8.0)
                .words("label", Math.max(zero, end) + 6, top + 14, Gain.signed(gainDb));
    }
}
