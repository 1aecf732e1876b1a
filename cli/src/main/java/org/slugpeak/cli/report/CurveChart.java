package org.slugpeak.cli.report;

import java.util.List;
import org.slugpeak.cli.words.ReportPhrase;
import org.slugpeak.core.curve.ResponsePoint;
import org.slugpeak.core.curve.SignedCurve;

/** Response curves over each other, in dB below the highest of all; in percent of it where one has a zero between two signs. */
final class CurveChart {

    private static final int WIDTH = 720;
    private static final int HEIGHT = 320;
    private static final double LEFT = 60;
    private static final double RIGHT = WIDTH - 12.0;
    private static final double TOP = 30;
    private static final double BOTTOM = HEIGHT - 40.0;
    private static final double DEEPEST_DB = -60;
    private static final String[] STYLES = {"curve first", "curve second", "curve third"};

    /** How levels are drawn. */
    private record Scale(boolean signed, double highest) {

        double of(CurvePoint point) {
            if (signed) {
                return 100 * point.level() / highest;
            }
            double dB = Gain.between(highest, point.level());
            return Double.isNaN(dB) ? DEEPEST_DB : Math.max(DEEPEST_DB, dB);
        }

        Axis axis(double lowest) {
            return signed ? new Axis(-105, 105, BOTTOM, TOP) : new Axis(Math.min(-3, lowest), 1, BOTTOM, TOP);
        }

        String unit() {
            return signed ? " %" : " dB";
        }
    }

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
        Scale scale = new Scale(shown.stream().anyMatch(CurveChart::hasZero), highest);
        double lowest = shown.stream()
                .flatMap(story -> story.curve().stream())
                .mapToDouble(scale::of)
                .min()
                .orElse(-3);
        Axis level = scale.axis(lowest);
        Svg svg = frame(frequency, level, scale.unit());
        for (int i = 0; i < shown.size(); i++) {
            draw(svg, shown.get(i), frequency, level, scale, STYLES[Math.min(i, STYLES.length - 1)]);
            svg.words(
                    "label " + STYLES[Math.min(i, STYLES.length - 1)],
                    LEFT + 10 + i * 220.0,
                    TOP - 12,
                    (i + 1) + ": " + Numbers.shortened(shown.get(i).name(), 28));
        }
        return svg.text();
    }

    private static boolean hasZero(SessionStory story) {
        return SignedCurve.hasBothSigns(story.curve().stream()
                .filter(point -> point.hz() > 0 && Double.isFinite(point.level()))
                .map(point -> new ResponsePoint(point.hz(), point.level()))
                .toList());
    }

    private static Svg frame(Axis frequency, Axis level, String unit) {
        Svg svg = new Svg(WIDTH, HEIGHT, ReportPhrase.RESPONSE_CHART.of());
        for (double mark : level.marks(7)) {
            svg.line("grid", LEFT, level.pixel(mark), RIGHT, level.pixel(mark))
                    .words("mark end", LEFT - 6, level.pixel(mark) + 4, Numbers.plain(mark) + unit);
        }
        for (double mark : frequency.marks(8)) {
            svg.line("grid", frequency.pixel(mark), TOP, frequency.pixel(mark), BOTTOM)
                    .words("mark middle", frequency.pixel(mark), BOTTOM + 16, Numbers.plain(mark));
        }
        return svg.words("mark middle", (LEFT + RIGHT) / 2, HEIGHT - 6.0, ReportPhrase.GENERATOR_AXIS.of());
    }

    private static void draw(Svg svg, SessionStory story, Axis frequency, Axis level, Scale scale, String style) {
        svg.path(style);
        story.curve().forEach(point -> svg.point(frequency.pixel(point.hz() / 1e3), level.pixel(scale.of(point))));
        svg.end();
        story.curve().forEach(point -> svg.dot(style, frequency.pixel(point.hz() / 1e3), level.pixel(scale.of(point))));
    }
}
