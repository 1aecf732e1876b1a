package org.slugpeak.cli.report;

import java.util.Locale;

/**
 * Writes the few shapes that the charts need: lines with real text, small enough to stand within a page. One thread at a time.
 */
final class Svg {

    private final StringBuilder text = new StringBuilder();

    Svg(int width, int height, String title) {
        text.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"%s\">%n",
                width,
                height,
                Html.escape(title)));
        text.append("<title>").append(Html.escape(title)).append("</title>\n");
    }

    Svg line(String style, double x1, double y1, double x2, double y2) {
        text.append(String.format(
                Locale.ROOT,
                "<line class=\"%s\" x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\"/>%n",
                style,
                x1,
                y1,
                x2,
                y2));
        return this;
    }

    Svg box(String style, double x, double y, double width, double height) {
        text.append(String.format(
                Locale.ROOT,
                "<rect class=\"%s\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>%n",
                style,
                x,
                y,
                Math.max(0, width),
                Math.max(0, height)));
        return this;
    }

    Svg dot(String style, double x, double y) {
        text.append(
                String.format(Locale.ROOT, "<circle class=\"%s\" cx=\"%.1f\" cy=\"%.1f\" r=\"3\"/>%n", style, x, y));
        return this;
    }

    Svg words(String style, double x, double y, String words) {
        text.append(String.format(Locale.ROOT, "<text class=\"%s\" x=\"%.1f\" y=\"%.1f\">", style, x, y))
                .append(Html.escape(words))
                .append("</text>\n");
        return this;
    }

    /** Begins a line through many points; the points follow, then {@link #end}. */
    Svg path(String style) {
        text.append("<polyline class=\"").append(style).append("\" points=\"");
        return this;
    }

    Svg point(double x, double y) {
        text.append(String.format(Locale.ROOT, "%.1f,%.1f ", x, y));
        return this;
    }

    Svg end() {
        text.append("\"/>\n");
        return this;
    }

    String text() {
        return text + "</svg>\n";
    }
}
