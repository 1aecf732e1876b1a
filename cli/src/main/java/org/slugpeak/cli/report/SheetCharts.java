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
                List.of(FigureKind.WIDTH_6_DB, FigureKind.WIDTH_20_DB, FigureKind.WIDTH_40_DB),
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
        List<SheetStory> sheets = SheetTables.sheets(stories).stream()
                .filter(sheet -> points.apply(sheet).size() > 1)
                .toList();
        List<Plot.Point> all =
                sheets.stream().flatMap(sheet -> points.apply(sheet).stream()).toList();
        if (all.isEmpty()) {
            return "";
        }
        Plot plot = new Plot(
                title + ": " + inWords(sheets, kinds),
                new Axis(least(all, Plot.Point::x), most(all, Plot.Point::x), Plot.LEFT, Plot.RIGHT),
                axisName,
                new Axis(least(all, Plot.Point::y), Math.max(1, most(all, Plot.Point::y)), Plot.BOTTOM, Plot.TOP),
                " dB");
        sheets.forEach(sheet -> plot.line(SheetWords.occasion(sheet.conditions().occasion()), points.apply(sheet)));
        return plot.text();
    }

    private static double least(List<Plot.Point> points, Function<Plot.Point, Double> of) {
        return points.stream().map(of).min(Double::compare).orElseThrow();
    }

    private static double most(List<Plot.Point> points, Function<Plot.Point, Double> of) {
        return points.stream().map(of).max(Double::compare).orElseThrow();
    }

    /** For whoever does not see it: what it shows, in figures. */
    private static String inWords(List<SheetStory> sheets, List<FigureKind> kinds) {
        return sheets.stream()
                .map(sheet -> sheet.figures().stream()
                        .filter(figure -> kinds.contains(figure.kind()))
                        .map(figure -> SheetWords.name(figure.kind()) + " " + SheetWords.value(figure))
                        .collect(Collectors.joining(
                                ", ", SheetWords.occasion(sheet.conditions().occasion()) + " ", "")))
                .collect(Collectors.joining("; "));
    }
}
