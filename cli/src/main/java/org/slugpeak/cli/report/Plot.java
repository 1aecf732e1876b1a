package org.slugpeak.cli.report;

import java.util.List;

/** Lines over each other on one pair of axes, with dots where something was measured. One thread at a time. */
final class Plot {

    static final double LEFT = 60;
    static final double TOP = 30;
    static final double RIGHT = 708;
    static final double BOTTOM = 280;

    private static final int WIDTH = 720;
    private static final int HEIGHT = 320;
    private static final String[] STYLES = {"curve first", "curve second", "curve third"};

    /** A place on the axes, each in its axis' own unit. */
    record Point(double x, double y) {}

    private final Axis across;
    private final Axis upwards;
    private final Svg svg;
    private int lines;

    /**
     * Axes without a line.
     *
     * @param title for whoever does not see it
     * @param across runs from {@link #LEFT} to {@link #RIGHT}
     * @param acrossName with its unit
     * @param upwards runs from {@link #BOTTOM} to {@link #TOP}
     * @param upwardsUnit behind each of its marks
     */
    Plot(String title, Axis across, String acrossName, Axis upwards, String upwardsUnit) {
        this.across = across;
        this.upwards = upwards;
        this.svg = new Svg(WIDTH, HEIGHT, title);
        for (double mark : upwards.marks(7)) {
            svg.line("grid", LEFT, upwards.pixel(mark), RIGHT, upwards.pixel(mark))
                    .words("mark end", LEFT - 6, upwards.pixel(mark) + 4, Numbers.plain(mark) + upwardsUnit);
        }
        for (double mark : across.marks(8)) {
            svg.line("grid", across.pixel(mark), TOP, across.pixel(mark), BOTTOM)
                    .words("mark middle", across.pixel(mark), BOTTOM + 16, Numbers.plain(mark));
        }
        svg.words("mark middle", (LEFT + RIGHT) / 2, HEIGHT - 6.0, acrossName);
    }

    /** One more line, named above the axes. */
    void line(String name, List<Point> points) {
        String style = STYLES[Math.min(lines, STYLES.length - 1)];
        svg.path(style);
        points.forEach(point -> svg.point(across.pixel(point.x()), upwards.pixel(point.y())));
        svg.end();
        points.forEach(point -> svg.dot(style, across.pixel(point.x()), upwards.pixel(point.y())));
        svg.words(
                "label " + style,
                LEFT + 10 + lines * 220.0,
                TOP - 12,
                (lines + 1) + ": " + Numbers.shortened(name, 28));
        lines++;
    }

    String text() {
        return svg.text();
    }
}
