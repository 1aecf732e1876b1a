package org.slugpeak.cli.report;

import java.util.List;
import org.slugpeak.cli.words.ReportPhrase;

/**
 * The levels over time with the adjusters and their peaks: decibels as if nobody had touched the generator, or around a zero the
 * readings themselves. Each course has its own zero; where the generator was turned stands a line with its decibels.
 */
final class LevelChart {

    private static final int WIDTH = 720;
    private static final int HEIGHT = 300;
    private static final double LEFT = 66;
    private static final double RIGHT = WIDTH - 24.0;
    private static final double TOP = 26;
    private static final double BOTTOM = HEIGHT - 40.0;

    /** Deeper than this below the highest nothing is told apart by eye. */
    private static final double DEEPEST_DB = -40;

    private final SessionStory story;
    private final List<LevelCourse> courses;
    private final boolean inUnit;
    private final Axis time;
    private final Axis level;
    private final Svg svg;

    private LevelChart(SessionStory story, List<LevelCourse> courses, boolean inUnit) {
        this.story = story;
        this.courses = courses;
        this.inUnit = inUnit;
        this.time = new Axis(0, Math.max(1, story.lengthNanos() / 1e9), LEFT, RIGHT);
        double most = courses.stream()
                .mapToDouble(each -> each.highest() - each.zero())
                .max()
                .orElse(0);
        double least = courses.stream()
                .mapToDouble(each -> each.lowest() - each.zero())
                .min()
                .orElse(0);
        this.level = inUnit
                ? new Axis(Math.min(least, 0), Math.max(most, 0), BOTTOM, TOP)
                : new Axis(Math.max(most + DEEPEST_DB, Math.min(most - 1, least)), most + 0.5, BOTTOM, TOP);
        this.svg = new Svg(WIDTH, HEIGHT, title(courses, inUnit).of());
    }

    /** The chart in decibels; empty where there is nothing to show: fewer than two readings, or none that is more than nothing. */
    static String svg(SessionStory story) {
        return svg(story, false);
    }

    /** The chart in the unit of the readings; empty where no zero was sought. */
    static String zeroSvg(SessionStory story) {
        return svg(story, true);
    }

    private static String svg(SessionStory story, boolean inUnit) {
        List<LevelCourse> courses = story.levels().courses().stream()
                .filter(each -> each.inUnit() == inUnit && each.stretches().size() > 1)
                .filter(each -> inUnit || each.highest() > ConstantGenerator.NOTHING_DB)
                .toList();
        return courses.isEmpty() ? "" : new LevelChart(story, courses, inUnit).draw();
    }

    private static ReportPhrase title(List<LevelCourse> courses, boolean inUnit) {
        if (inUnit) {
            return ReportPhrase.ZERO_CHART;
        }
        return courses.stream().anyMatch(LevelCourse::wasTurned)
                ? ReportPhrase.LEVEL_CHART
                : ReportPhrase.BELOW_HIGHEST_CHART;
    }

    private String draw() {
        frame();
        boolean odd = false;
        for (Turn turn : turns()) {
            odd = !odd;
            adjuster(turn, odd);
        }
        story.generator().forEach(this::generator);
        courses.forEach(this::trace);
        turns().forEach(this::peak);
        return svg.text();
    }

    private List<Turn> turns() {
        return story.turns().stream().filter(turn -> turn.inUnit() == inUnit).toList();
    }

    private void frame() {
        String unit = inUnit ? story.start().measurand().unit() : "dB";
        for (double mark : level.marks(6)) {
            svg.line("grid", LEFT, level.pixel(mark), RIGHT, level.pixel(mark))
                    .words("mark end", LEFT - 6, level.pixel(mark) + 4, Numbers.plain(mark) + " " + unit);
        }
        for (double mark : time.marks(8)) {
            svg.words("mark middle", time.pixel(mark), BOTTOM + 16, Numbers.clock((long) (mark * 1e9)));
        }
        svg.words("mark middle", (LEFT + RIGHT) / 2, HEIGHT - 6.0, ReportPhrase.TIME_AXIS.of());
    }

    private void adjuster(Turn turn, boolean odd) {
        double from = x(turn.beginNanos());
        double to = x(turn.endNanos());
        int letters = (int) ((to - from) / 6.5);
        svg.box(odd ? "band odd" : "band", from, TOP - 18, to - from, BOTTOM - TOP + 18);
        if (letters >= 4) {
            svg.words("label", from + 3, TOP - 6, Numbers.shortened(turn.adjuster(), letters));
        }
    }

    private void generator(GeneratorTurn turn) {
        if (!inUnit) {
            double x = x(turn.tNanos());
            svg.line("generator", x, TOP, x, BOTTOM).words("mark", x + 3, BOTTOM - 5, Gain.tenths(turn.changeDb()));
        }
    }

    /** One column of the paper shows the least and the greatest of its readings, so that no jump is lost. */
    private void trace(LevelCourse course) {
        svg.path("trace");
        double column = Double.NaN;
        double least = 0;
        double most = 0;
        for (Trace.Stretch stretch : course.stretches()) {
            double x = Math.rint(x(stretch.tNanos()));
            double top = y(stretch.most() - course.zero());
            double bottom = y(stretch.least() - course.zero());
            if (x != column) {
                drawColumn(column, least, most);
                column = x;
                least = top;
                most = top;
            }
            least = Math.min(least, top);
            most = Math.max(most, bottom);
        }
        drawColumn(column, least, most);
        svg.end();
    }

    private void drawColumn(double x, double least, double most) {
        if (!Double.isNaN(x)) {
            svg.point(x, least);
            if (most > least) {
                svg.point(x, most);
            }
        }
    }

    private void peak(Turn turn) {
        if (Double.isFinite(turn.best())) {
            svg.line("best", x(turn.beginNanos()), y(turn.best()), x(turn.endNanos()), y(turn.best()));
        }
    }

    private double x(long tNanos) {
        return time.pixel(tNanos / 1e9);
    }

    private double y(double value) {
        return level.pixel(Math.max(level.from(), value));
    }
}
