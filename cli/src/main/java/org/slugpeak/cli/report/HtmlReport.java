package org.slugpeak.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slugpeak.cli.words.ComparePhrase;
import org.slugpeak.cli.words.ReportPhrase;
import org.slugpeak.cli.words.SheetPhrase;

/** The report as one page that needs nothing else: style and charts are within it. All methods are pure. */
public final class HtmlReport {

    private static final String HEAD = "<!DOCTYPE html>\n<html lang=\"%s\">\n<head>\n<meta charset=\"utf-8\">\n"
            + "<meta name=\"viewport\" content=\"width=device-width\">\n<title>%s";

    private static final String STYLE = "report.css";

    /** So many rows of one line, or half as many of two, are on one page of A4 or Letter. */
    private static final int ROWS_OF_A_PAGE = 20;

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
     * @param cover what is known beside them, and how it is to look
     * @return HTML
     */
    public static String of(List<SessionStory> stories, Cover cover) {
        StringBuilder page = new StringBuilder();
        String title = Html.escape(ReportPhrase.TITLE.of(Summary.title(stories.get(0))));
        page.append(HEAD.formatted(ReportPhrase.LANGUAGE.of(), title))
                .append("</title>\n<style>\n")
                .append(style())
                .append("@page { size: ")
                .append(cover.paper().css())
                .append("; margin: 15mm; }\n</style>\n</head>\n<body")
                .append(cover.large() ? " class=\"large\"" : "")
                .append(">\n<main>\n<h1>")
                .append(title)
                .append("</h1>\n");
        ReportTables.facts(cover.facts()).ifPresent(facts -> table(page, facts));
        if (Comparison.isAsked(stories)) {
            comparison(page, Comparison.of(stories.get(0), stories.get(1)), cover);
        }
        SheetTables.of(stories).forEach(sheet -> table(page, sheet));
        figure(page, SheetPhrase.SELECTIVITY_CHART.of(), SheetCharts.selectivity(stories));
        figure(page, SheetPhrase.AVC_CHART.of(), SheetCharts.avc(stories));
        if (!cover.changesOnly()) {
            stories.forEach(story -> session(page, story, stories.size() > 1, cover));
            ReportTables.dials(stories).ifPresent(dials -> table(page, dials));
        }
        figure(page, ReportPhrase.RESPONSE.of(), CurveChart.svg(stories));
        page.append("<footer>").append(ReportPhrase.FOOT.of()).append("</footer>\n</main>\n</body>\n</html>\n");
        return page.toString();
    }

    private static void comparison(StringBuilder page, Comparison comparison, Cover cover) {
        page.append("<section>\n<h2>").append(ComparePhrase.TITLE.of()).append("</h2>\n");
        ComparisonTables.lines(comparison, cover.zone()).forEach(line -> paragraph(page, line));
        ComparisonTables.of(comparison).forEach(each -> table(page, each));
        ComparisonTables.how(comparison).ifPresent(how -> paragraph(page, how));
        page.append("</section>\n");
    }

    private static void paragraph(StringBuilder page, String line) {
        page.append("<p>").append(Html.escape(line)).append("</p>\n");
    }

    private static void session(StringBuilder page, SessionStory story, boolean oneOfMany, Cover cover) {
        page.append("<section>\n");
        if (oneOfMany) {
            page.append("<h2>").append(Html.escape(Summary.title(story))).append("</h2>\n");
        }
        Summary.lines(story, cover.zone()).forEach(line -> paragraph(page, line));
        ReportTables.remaining(story).ifPresent(warnings -> table(page, warnings));
        figure(page, ReportPhrase.GAIN.of(), GainChart.svg(story.turns()));
        List<String> levels = story.sheets().isEmpty() ? LevelChart.svgs(story) : List.of();
        levels.forEach(chart -> figure(page, ReportPhrase.OVER_TIME.of(), chart));
        ReportTables.of(story).forEach(each -> table(page, each));
        ReportTables.course(story).ifPresent(course -> table(page, course));
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

    /** A table that fits a page is not torn apart; the headings of a longer one stand on each page. */
    private static void table(StringBuilder page, ReportTable table) {
        page.append(table.rows().size() <= ROWS_OF_A_PAGE ? "<table class=\"whole\">\n" : "<table>\n")
                .append("<caption>")
                .append(Html.escape(table.title()))
                .append("</caption>\n<thead>\n<tr>");
        table.columns()
                .forEach(column -> page.append("<th scope=\"col\">")
                        .append(Html.escape(column))
                        .append("</th>"));
        page.append("</tr>\n</thead>\n<tbody>\n");
        table.rows().forEach(row -> row(page, row));
        page.append("</tbody>\n</table>\n");
    }

    private static void row(StringBuilder page, List<String> cells) {
        page.append("<tr>");
        cells.forEach(cell -> page.append("<td>").append(Html.escape(cell)).append("</td>"));
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
