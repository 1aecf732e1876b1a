package org.slugpeak.cli.report;

import java.util.List;
import java.util.stream.Collectors;
import org.slugpeak.bridge.text.SafeText;
import org.slugpeak.cli.words.ComparePhrase;

/** The report as plain text with tables. All methods are pure. */
public final class MarkdownReport {

    /** What every text begins with; a comment is not shown. */
    static final String OPENING = "<!-- slugpeak report -->\n";

    private MarkdownReport() {}

    /**
     * The text.
     *
     * @param stories one or more sessions
     * @param cover what is known beside them; how it looks counts for nothing here
     * @return Markdown, readable as it is
     */
    public static String of(List<SessionStory> stories, Cover cover) {
        StringBuilder text = new StringBuilder(OPENING);
        ReportTables.facts(cover.facts()).ifPresent(facts -> table(text, facts));
        if (Comparison.isAsked(stories)) {
            comparison(text, Comparison.of(stories.get(0), stories.get(1)), cover);
        }
        SheetTables.of(stories).forEach(sheet -> table(text, sheet));
        if (!cover.changesOnly()) {
            stories.forEach(story -> session(text, story, cover));
            ReportTables.dials(stories).ifPresent(dials -> table(text, dials));
        }
        return text.toString();
    }

    private static void comparison(StringBuilder text, Comparison comparison, Cover cover) {
        head(text, ComparePhrase.TITLE.of(), ComparisonTables.lines(comparison, cover.zone()));
        ComparisonTables.of(comparison).forEach(table -> table(text, table));
        ComparisonTables.how(comparison)
                .ifPresent(how -> text.append('\n').append(escape(how)).append('\n'));
        text.append('\n');
    }

    private static void session(StringBuilder text, SessionStory story, Cover cover) {
        head(text, Summary.title(story), Summary.lines(story, cover.zone()));
        ReportTables.remaining(story).ifPresent(warnings -> table(text, warnings));
        ReportTables.of(story).forEach(table -> table(text, table));
        ReportTables.course(story).ifPresent(course -> table(text, course));
        text.append('\n');
    }

    private static void head(StringBuilder text, String title, List<String> lines) {
        text.append("# ").append(escape(title)).append("\n\n");
        lines.forEach(line -> text.append(escape(line)).append("  \n"));
    }

    private static void table(StringBuilder text, ReportTable table) {
        text.append("\n## ").append(table.title()).append("\n\n");
        row(text, table.columns());
        row(text, table.columns().stream().map(column -> "---").toList());
        table.rows().forEach(row -> row(text, row));
    }

    private static void row(StringBuilder text, List<String> cells) {
        text.append(cells.stream().map(MarkdownReport::escape).collect(Collectors.joining(" | ", "| ", " |")))
                .append('\n');
    }

    private static String escape(String cell) {
        return SafeText.line(cell).replaceAll("([\\\\|`*_<>\\[\\]#])", "\\\\$1");
    }
}
