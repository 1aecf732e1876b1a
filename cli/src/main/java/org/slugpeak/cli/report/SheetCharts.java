package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.slugpeak.cli.words.SheetPhrase;
import org.slugpeak.cli.words.SheetWords;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.sheet.SheetCurves;

/** The curves of receivers' sheets, before and after in one drawing; empty where none was measured. All methods are pure. */
final class SheetCharts {

    private static final double MICROVOLT_DB = Decibels.of(1e-6);

    /** A sheet, and what is drawn of it. */
    private record Line(SheetStory sheet, List<Plot.Point> points) {

        String name() {
            return SheetWords.occasion(sheet.conditions().occasion());
        }
    }

    private SheetCharts() {}

    /** Output against input, decibels below that of the strongest input. */
    static String avc(List<SessionStory> stories) {
        return chart(
                stories,
                SheetPhrase.AVC_CHART.of(),
                SheetPhrase.INPUT_AXIS.of(),
                List.of(FigureKind.AVC),
                sheet -> avc(sheet));
    }

    private static List<Plot.Point> avc(SheetStory sheet) {
        List<SheetCurves.Place> places = SheetCurves.avc(sheet.outputs());
        double mostDb = places.isEmpty() ? 0 : places.get(0).db();
        return places.stream()
                .map(it -> new Plot.Point(it.x() - MICROVOLT_DB, it.db() - mostDb))
                .sorted(Comparator.comparingDouble(Plot.Point::x))
                .toList();
    }

    /** Loss against distance from the signal. */
    static String selectivity(List<SessionStory> stories) {
        return chart(
                stories,
                SheetPhrase.SELECTIVITY_CHART.of(),
                SheetPhrase.OFF_AXIS.of(),
                FigureKind.WIDTHS,
                SheetCharts::losses);
    }

    private static List<Plot.Point> losses(SheetStory sheet) {
        List<Plot.Point> points = new ArrayList<>(SheetCurves.selectivity(sheet.conditions(), sheet.outputs()).stream()
                .map(it -> new Plot.Point(it.x() / 1e3, -it.db()))
                .toList());
        if (!points.isEmpty()) {
            points.add(new Plot.Point(0, 0));
        }
        points.sort(Comparator.comparingDouble(Plot.Point::x));
        return points;
    }

    private static String chart(
            List<SessionStory> stories,
            String title,
            String axisName,
            List<FigureKind> kinds,
            Function<SheetStory, List<Plot.Point>> points) {
        List<Line> lines = SheetTables.sheets(stories).stream()
                .map(sheet -> new Line(sheet, points.apply(sheet)))
                .filter(line -> line.points().size() > 1)
                .toList();
        List<Plot.Point> all =
                lines.stream().flatMap(line -> line.points().stream()).toList();
        if (all.isEmpty()) {
            return "";
        }
        Plot plot = new Plot(
                title + ": " + inWords(lines, kinds),
                new Axis(least(all, Plot.Point::x), most(all, Plot.Point::x), Plot.LEFT, Plot.RIGHT),
                axisName,
                new Axis(least(all, Plot.Point::y), Math.max(1, most(all, Plot.Point::y)), Plot.BOTTOM, Plot.TOP),
                " dB");
        lines.forEach(line -> plot.line(line.name(), line.points()));
        return plot.text();
    }

    private static double least(List<Plot.Point> points, Function<Plot.Point, Double> of) {
        return points.stream().map(of).min(Double::compare).orElseThrow();
    }

    private static double most(List<Plot.Point> points, Function<Plot.Point, Double> of) {
        return points.stream().map(of).max(Double::compare).orElseThrow();
    }

    /** For whoever does not see it: what it shows, in figures. */
    private static String inWords(List<Line> lines, List<FigureKind> kinds) {
        return lines.stream()
                .map(line -> line.sheet().figures().stream()
                        .filter(figure -> kinds.contains(figure.kind()))
                        .map(figure -> SheetWords.name(figure.kind()) + " " + SheetWords.value(figure))
                        .collect(Collectors.joining(", ", line.name() + " ", "")))
                .collect(Collectors.joining("; "));
    }
}
