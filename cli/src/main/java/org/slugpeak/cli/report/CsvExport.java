package org.slugpeak.cli.report;

import java.util.List;

/**
 * Every reading of the sessions, one a line (RFC 4180); where there is none, as in logs of {@code slugpeak scale}, every dial error.
 * All methods are pure.
 */
public final class CsvExport {

    private CsvExport() {}

    /**
     * The readings, or the dial errors.
     *
     * @param stories one or more sessions
     * @return lines with a heading; a number that is not known is an empty field
     */
    public static String of(List<SessionStory> stories) {
        boolean withoutReadings =
                stories.stream().allMatch(story -> story.levels().isEmpty());
        return withoutReadings && ReportTables.dials(stories).isPresent() ? dials(stories) : readings(stories);
    }

    private static String dials(List<SessionStory> stories) {
        StringBuilder text = new StringBuilder("signalHz,dialErrorHz,when,session\n");
        for (SessionStory story : stories) {
            for (DialPoint point : story.dials()) {
                text.append(number(point.hz()))
                        .append(',')
                        .append(number(point.errorHz()))
                        .append(point.after() ? ",after," : ",before,")
                        .append(quoted(story.name()))
                        .append('\n');
            }
        }
        return text.toString();
    }

    private static String readings(List<SessionStory> stories) {
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
