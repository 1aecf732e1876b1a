package org.slugpeak.cli.report;

import java.util.List;
import org.slugpeak.cli.words.ReportPhrase;

/** Response curves over each other, in dB below the highest of all; in percent of it where one has a zero between two signs. */
final class CurveChart {

    private static final double DEEPEST_DB = -60;

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
            return signed
                    ? new Axis(-105, 105, Plot.BOTTOM, Plot.TOP)
                    : new Axis(Math.min(-3, lowest), 1, Plot.BOTTOM, Plot.TOP);
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
        Axis frequency = new Axis(low / 1e3, Math.max(high, low + 1) / 1e3, Plot.LEFT, Plot.RIGHT);
        Scale scale = new Scale(shown.stream().anyMatch(CurveFigures::hasZero), highest);
        double lowest = shown.stream()
                .flatMap(story -> story.curve().stream())
                .mapToDouble(scale::of)
                .min()
                .orElse(-3);
        Axis level = scale.axis(lowest);
        Plot plot = new Plot(
                ReportPhrase.RESPONSE_CHART.of(), frequency, ReportPhrase.GENERATOR_AXIS.of(), level, scale.unit());
        shown.forEach(story -> plot.line(
                story.name(),
                story.curve().stream()
                        .map(point -> new Plot.Point(point.hz() / 1e3, scale.of(point)))
                        .toList()));
        return plot.text();
    }
}
