package org.slugpeak.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slugpeak.cli.words.ReportPhrase;

/** The report as one page that needs nothing else: style and charts are within it. All methods are pure. */
public final class HtmlReport {

    private static final String HEAD = "<!DOCTYPE html>\n<html lang=\"%s\">\n<head>\n<meta charset=\"utf-8\">\n"
            + "<meta name=\"viewport\" content=\"width=device-width\">\n<title>%s";

    private static final String STYLE = "report.css";

    private HtmlReport() {}

    /** What a page begins with in today's language, and in English. */
    static List<String> openings() {
        return List.of(
                HEAD.formatted(ReportPhrase.LANGUAGE.of(), ReportPhrase.TITLE.of("")),
                HEAD.formatted(ReportPhrase.LANGUAGE.inEnglish(), ReportPhrase.TITLE.inEnglish("")));
    }

    /**
     * The page.
     *
     * @param stories one or more sessions
     * @return HTML
     */
    public static String of(List<SessionStory> stories) {
        StringBuilder page = new StringBuilder();
        String title = Html.escape(ReportPhrase.TITLE.of(Summary.title(stories.get(0))));
        page.append(HEAD.formatted(ReportPhrase.LANGUAGE.of(), title))
                .append("</title>\n<style>\n")
                .append(style())
                .append("</style>\n</head>\n<body>\n<h1>")
                .append(title)
                .append("</h1>\n");
        stories.forEach(story -> session(page, story, stories.size() > 1));
        ReportTables.dials(stories).ifPresent(dials -> table(page, dials));
        figure(page, ReportPhrase.RESPONSE.of(), CurveChart.svg(stories));
        page.append("<footer>").append(ReportPhrase.FOOT.of()).append("</footer>\n</body>\n</html>\n");
        return page.toString();
    }

    private static void session(StringBuilder page, SessionStory story, boolean oneOfMany) {
        page.append("<section>\n");
        if (oneOfMany) {
            page.append("<h2>").append(Html.escape(Summary.title(story))).append("</h2>\n");
        }
        Summary.lines(story)
                .forEach(line -> page.append("<p>").append(Html.escape(line)).append("</p>\n"));
        figure(page, ReportPhrase.GAIN.of(), GainChart.svg(story.turns()));
        LevelChart.svgs(story).forEach(chart -> figure(page, ReportPhrase.OVER_TIME.of(), chart));
        ReportTables.of(story).forEach(each -> table(page, each));
        ReportTables.course(story).ifPresent(course -> folded(page, course));
        page.append("</section>\n");
    }

    private static void figure(StringBuilder page, String caption, String svg) {
        if (!svg.isEmpty()) {
            page.append("<figure>\n<figcaption>")
                    .append(Html.escape(caption))
                    .append("</figcaption>\n")
                    .append(svg)
                    .append("</figure>\n");
        }
    }

    /** Closed until somebody opens it, on paper too. */
    private static void folded(StringBuilder page, ReportTable table) {
        page.append("<details>\n<summary>")
                .append(Html.escape(
                        ReportPhrase.LINES.of(table.title(), table.rows().size())))
                .append("</summary>\n");
        rows(page, table);
        page.append("</details>\n");
    }

    private static void table(StringBuilder page, ReportTable table) {
        page.append("<h3>").append(Html.escape(table.title())).append("</h3>\n");
        rows(page, table);
    }

    private static void rows(StringBuilder page, ReportTable table) {
        page.append("<table>\n");
        row(page, "th", table.columns());
        table.rows().forEach(row -> row(page, "td", row));
        page.append("</table>\n");
    }

    private static void row(StringBuilder page, String element, List<String> cells) {
        if (cells.stream().allMatch(String::isEmpty)) {
            return;
        }
        page.append("<tr>");
        cells.forEach(cell -> page.append('<')
                .append(element)
                .append('>')
                .append(Html.escape(cell))
                .append("</")
                .append(element)
                .append('>'));
        page.append("</tr>\n");
    }

    private static String style() {
        try (InputStream stream = HtmlReport.class.getResourceAsStream(STYLE)) {
            if (stream == null) {
                throw new IllegalStateException("the report's style sheet is missing from this installation");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
