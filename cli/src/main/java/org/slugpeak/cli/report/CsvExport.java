package org.slugpeak.cli.report;

import java.util.List;

/** Every reading of the sessions, one a line (RFC 4180). All methods are pure. */
public final class CsvExport {

    private CsvExport() {}

    /**
     * The readings.
     *
     * @param stories one or more sessions
     * @return lines with a heading; a number that is not known is an empty field
     */
    public static String of(List<SessionStory> stories) {
        StringBuilder text = new StringBuilder("seconds,value,smoothed,best,condition,adjuster,session\n");
        for (SessionStory story : stories) {
            for (LevelPoint point : story.levels()) {
                text.append(point.tNanos() / 1e9)
                        .append(',')
                        .append(point.condition().hasValue() ? number(point.value()) : "")
                        .append(',')
                        .append(number(point.smoothed()))
                        .append(',')
                        .append(number(point.best()))
                        .append(',')
                        .append(point.condition().code())
                        .append(',')
                        .append(quoted(point.adjuster()))
                        .append(',')
                        .append(quoted(story.name()))
                        .append('\n');
            }
        }
        return text.toString();
    }

    private static String number(double value) {
        return Double.isFinite(value) ? Double.toString(value) : "";
    }

    private static String quoted(String text) {
        return text.matches("[^\",\r\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
