package org.slugpeak.cli.report;

import java.util.function.DoubleUnaryOperator;
import org.slugpeak.cli.words.ReportPhrase;

/** The reading over time, in dB below the highest, with the adjusters and their peaks. */
final class LevelChart {

    private static final int WIDTH = 720;
    private static final int HEIGHT = 300;
    private static final double LEFT = 60;
    private static final double RIGHT = WIDTH - 24.0;
    private static final double TOP = 26;
    private static final double BOTTOM = HEIGHT - 40.0;
    private static final double DEEPEST_DB = -40;

    private final SessionStory story;
    private final DoubleUnaryOperator toDb;
    private final Axis time;
    private final Axis level;
    private final Svg svg = new Svg(WIDTH, HEIGHT, ReportPhrase.LEVEL_CHART.of());

    private LevelChart(SessionStory story, DoubleUnaryOperator toDb) {
        this.story = story;
        this.toDb = toDb;
        double lowest = toDb.applyAsDouble(story.levels().lowest().orElse(Double.NaN));
        this.time = new Axis(0, Math.max(1, story.lengthNanos() / 1e9), LEFT, RIGHT);
        this.level = new Axis(Math.max(DEEPEST_DB, Math.min(-1, lowest)), 0.5, BOTTOM, TOP);
    }

    /** Empty where there is nothing to show: fewer than two readings, or no peak was sought in dB. */
    static String svg(SessionStory story) {
        String unit = story.start().measurand().unit();
        double highest = story.levels().highest().orElse(Double.NaN);
        if (story.levels().drawn() < 2 || (!Gain.isDb(unit) && !(highest > 0))) {
            return "";
        }
        return new LevelChart(story, value -> Math.max(DEEPEST_DB, below(value, highest, unit))).draw();
    }

    private static double below(double value, double highest, String unit) {
        double dB = Gain.between(highest, value, unit);
        return Double.isNaN(dB) ? DEEPEST_DB : dB;
    }

    private String draw() {
        frame();
        boolean odd = false;
        for (Turn turn : story.turns()) {
            odd = !odd;
            adjuster(turn, odd);
        }
        trace();
        story.turns().forEach(this::peak);
        return svg.text();
    }

    private void frame() {
        for (double mark : level.marks(6)) {
            svg.line("grid", LEFT, level.pixel(mark), RIGHT, level.pixel(mark))
                    .words("mark end", LEFT - 6, level.pixel(mark) + 4, Numbers.plain(mark) + " dB");
        }
        for (double mark : time.marks(8)) {
            svg.words("mark middle", time.pixel(mark), BOTTOM + 16, Numbers.clock((long) (mark * 1e9)));
        }
        svg.words("mark middle", (LEFT + RIGHT) / 2, HEIGHT - 6.0, ReportPhrase.TIME_AXIS.of());
    }

    private void adjuster(Turn turn, boolean odd) {
        double from = time.pixel(turn.beginNanos() / 1e9);
        double to = time.pixel(turn.endNanos() / 1e9);
        int letters = (int) ((to - from) / 6.5);
        svg.box(odd ? "band odd" : "band", from, TOP - 18, to - from, BOTTOM - TOP + 18);
        if (letters >= 4) {
            svg.words("label", from + 3, TOP - 6, Numbers.shortened(turn.adjuster(), letters));
        }
    }

    /** One column of the paper shows the least and the greatest of its readings, so that no jump is lost. */
    private void trace() {
        svg.path("trace");
        double column = Double.NaN;
        double least = 0;
        double most = 0;
        for (Trace.Stretch stretch : story.levels().trace()) {
            double x = Math.rint(time.pixel(stretch.tNanos() / 1e9));
            double top = level.pixel(toDb.applyAsDouble(stretch.most()));
            double bottom = level.pixel(toDb.applyAsDouble(stretch.least()));
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
        if (Double.isFinite(turn.best()) && turn.best() != 0) {
            double y = level.pixel(Math.max(level.from(), toDb.applyAsDouble(turn.best())));
            svg.line("best", time.pixel(turn.beginNanos() / 1e9), y, time.pixel(turn.endNanos() / 1e9), y);
        }
    }
}
