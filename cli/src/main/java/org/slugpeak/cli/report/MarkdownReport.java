package org.slugpeak.cli.report;

import java.util.List;
import java.util.stream.Collectors;
import org.slugpeak.bridge.text.SafeText;

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
        for (SessionStory story : stories) {
            text.append("# ").append(escape(Summary.title(story))).append("\n\n");
            Summary.lines(story, cover.zone())
                    .forEach(line -> text.append(escape(line)).append("  \n"));
            ReportTables.remaining(story).ifPresent(warnings -> table(text, warnings));
            ReportTables.of(story).forEach(table -> table(text, table));
            ReportTables.course(story).ifPresent(course -> table(text, course));
            text.append('\n');
        }
        ReportTables.dials(stories).ifPresent(dials -> table(text, dials));
        return text.toString();
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
