package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.cli.words.ReportPhrase;

/**
 * The levels of one course over time with the adjusters and their peaks: decibels as if nobody had touched the generator, or around a
 * zero the readings themselves. Where the generator was turned stands a line with its decibels.
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

    /** As long without a reading is a gap; a thinned course has no shorter ones. The same as for a source that has fallen silent. */
    private static final long SILENCE_NANOS = 2_000_000_000L;

    private final SessionStory story;
    private final LevelCourse course;
    private final Axis time;
    private final Axis level;
    private final long gapNanos;
    private final Svg svg;

    private LevelChart(SessionStory story, LevelCourse course) {
        this.story = story;
        this.course = course;
        double begin = course.beginNanos() / 1e9;
        double end = course.endNanos() / 1e9;
        this.time = new Axis(begin, Math.max(begin + 1, end), LEFT, RIGHT);
        this.gapNanos = Math.max(SILENCE_NANOS, 4 * (course.endNanos() - course.beginNanos()) / Trace.MOST_STRETCHES);
        double most = course.highest() - course.zero();
        double least = course.lowest() - course.zero();
        this.level = course.inUnit()
                ? new Axis(
                        Math.min(least, 0),
                        Math.max(Math.max(most, 0), Math.min(least, 0) + Double.MIN_NORMAL),
                        BOTTOM,
                        TOP)
                : new Axis(Math.max(most + DEEPEST_DB, Math.min(most - 1, least)), most + 0.5, BOTTOM, TOP);
        this.svg = new Svg(WIDTH, HEIGHT, title(course).of());
    }

    /** One chart for each course in which there is something to show: two readings or more, of which one is more than nothing. */
    static List<String> svgs(SessionStory story) {
        return story.levels().courses().stream()
                .filter(LevelCourse::isWorthDrawing)
                .map(course -> new LevelChart(story, course).draw())
                .toList();
    }

    private static ReportPhrase title(LevelCourse course) {
        if (course.inUnit()) {
            return ReportPhrase.ZERO_CHART;
        }
        return course.wasTurned() ? ReportPhrase.LEVEL_CHART : ReportPhrase.BELOW_HIGHEST_CHART;
    }

    private String draw() {
        frame();
        List<Turn> turns = story.turns().stream()
                .filter(turn -> isShown(turn.beginNanos()))
                .toList();
        boolean odd = false;
        for (Turn turn : turns) {
            odd = !odd;
            adjuster(turn, odd);
        }
        if (!course.inUnit()) {
            story.generator().stream().filter(turn -> isShown(turn.tNanos())).forEach(this::generator);
        }
        trace();
        turns.forEach(this::peak);
        return svg.text();
    }

    private boolean isShown(long tNanos) {
        return tNanos >= course.beginNanos() && tNanos / 1e9 <= time.to();
    }

    private void frame() {
        String unit = course.inUnit() ? story.start().measurand().unit() : "dB";
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
        double x = x(turn.tNanos());
        svg.line("generator", x, TOP, x, BOTTOM).words("mark", x + 3, BOTTOM - 5, Gain.tenths(turn.changeDb()));
    }

    /** A line for each run without a gap. */
    private void trace() {
        List<Trace.Stretch> run = new ArrayList<>();
        for (Trace.Stretch stretch : course.stretches()) {
            if (!run.isEmpty() && stretch.tNanos() - run.get(run.size() - 1).tNanos() > gapNanos) {
                line(run);
                run.clear();
            }
            run.add(stretch);
        }
        line(run);
    }

    /** One column of the paper shows the least and the greatest of its readings, so that no jump is lost. */
    private void line(List<Trace.Stretch> run) {
        svg.path("trace");
        double column = Double.NaN;
        double least = 0;
        double most = 0;
        for (Trace.Stretch stretch : run) {
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
        return time.pixel(Math.min(time.to(), tNanos / 1e9));
    }

    private double y(double value) {
        return level.pixel(Math.max(level.from(), value));
    }
}
