package org.slugpeak.cli.report;

import java.util.List;
import org.slugpeak.cli.words.ReportPhrase;

/** Response curves over each other, in dB below the highest of all. */
final class CurveChart {

    private static final int WIDTH = 720;
    private static final int HEIGHT = 320;
    private static final double LEFT = 60;
    private static final double RIGHT = WIDTH - 12.0;
    private static final double TOP = 30;
    private static final double BOTTOM = HEIGHT - 40.0;
    private static final double DEEPEST_DB = -60;
    private static final String[] STYLES = {"curve first", "curve second", "curve third"};

    private CurveChart() {}

    /** Empty where no session has a curve. */
    static String svg(List<SessionStory> stories) {
        List<SessionStory> shown =
                stories.stream().filter(story -> story.curve().size() > 1).toList();
        double highest = shown.stream()
                .flatMap(story -> story.curve().stream())
                .mapToDouble(point -> Math.abs(point.level()))
                .max()
                .orElse(0);
        if (!(highest > 0)) {
            return "";
        }
        double low = shown.stream()
                .mapToDouble(story -> story.curve().get(0).hz())
                .min()
                .orElse(0);
        double high = shown.stream()
                .mapToDouble(
                        story -> story.curve().get(story.curve().size() - 1).hz())
                .max()
                .orElse(1);
        Axis frequency = new Axis(low / 1e3, Math.max(high, low + 1) / 1e3, LEFT, RIGHT);
        double lowest = shown.stream()
                .flatMap(story -> story.curve().stream())
                .mapToDouble(point -> dB(point, highest))
                .min()
                .orElse(-3);
        Axis level = new Axis(Math.min(-3, lowest), 1, BOTTOM, TOP);
        Svg svg = frame(frequency, level);
        for (int i = 0; i < shown.size(); i++) {
            draw(svg, shown.get(i), frequency, level, highest, STYLES[Math.min(i, STYLES.length - 1)]);
            svg.words(
                    "label " + STYLES[Math.min(i, STYLES.length - 1)],
                    LEFT + 10 + i * 220.0,
                    TOP - 12,
                    (i + 1) + ": " + Numbers.shortened(shown.get(i).name(), 28));
        }
        return svg.text();
    }

    private static double dB(CurvePoint point, double highest) {
        double dB = Gain.between(highest, point.level(), "");
        return Double.isNaN(dB) ? DEEPEST_DB : Math.max(DEEPEST_DB, dB);
    }

    private static Svg frame(Axis frequency, Axis level) {
        Svg svg = new Svg(WIDTH, HEIGHT, ReportPhrase.RESPONSE_CHART.of());
        for (double mark : level.marks(7)) {
            svg.line("grid", LEFT, level.pixel(mark), RIGHT, level.pixel(mark))
                    .words("mark end", LEFT - 6, level.pixel(mark) + 4, Numbers.plain(mark) + " dB");
        }
        for (double mark : frequency.marks(8)) {
            svg.line("grid", frequency.pixel(mark), TOP, frequency.pixel(mark), BOTTOM)
                    .words("mark middle", frequency.pixel(mark), BOTTOM + 16, Numbers.plain(mark));
        }
        return svg.words("mark middle", (LEFT + RIGHT) / 2, HEIGHT - 6.0, ReportPhrase.GENERATOR_AXIS.of());
    }

    private static void draw(Svg svg, SessionStory story, Axis frequency, Axis level, double highest, String style) {
        svg.path(style);
        story.curve().forEach(point -> svg.point(frequency.pixel(point.hz() / 1e3), level.pixel(dB(point, highest))));
        svg.end();
        story.curve()
                .forEach(point -> svg.dot(style, frequency.pixel(point.hz() / 1e3), level.pixel(dB(point, highest))));
    }
}
