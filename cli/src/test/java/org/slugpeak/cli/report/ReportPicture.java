package org.slugpeak.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.slugpeak.cli.words.ReportPhrase;

/** The upper half of a report's first page as a picture: its title, its sentences and its charts, as they stand in the page. */
final class ReportPicture {

    private static final int WIDTH = 800;
    private static final int MARGIN = 40;
    private static final int TITLE_HEIGHT = 30;
    private static final int LINE_HEIGHT = 20;
    private static final int GAP = 16;

    private final StringBuilder text = new StringBuilder();
    private int y = MARGIN;

    private ReportPicture() {}

    static String of(SessionStory story, Cover cover) throws IOException {
        return new ReportPicture().draw(story, cover);
    }

    private String draw(SessionStory story, Cover cover) throws IOException {
        y += TITLE_HEIGHT;
        words(Summary.title(story), "font: bold 24px Georgia, serif");
        y += GAP;
        for (String line : Summary.lines(story, cover.zone())) {
            y += LINE_HEIGHT;
            words(line, "font: 15px Georgia, serif");
        }
        chart(ReportPhrase.GAIN.of(), GainChart.svg(story.turns()));
        LevelChart.svgs(story).forEach(chart -> chart(ReportPhrase.OVER_TIME.of(), chart));
        y += MARGIN;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\">\n".formatted(WIDTH, y)
                + "<title>slugpeak report</title>\n<style>\n" + styleOfCharts() + "</style>\n"
                + "<rect width=\"%d\" height=\"%d\" style=\"fill: #fff\"/>\n".formatted(WIDTH, y) + text + "</svg>\n";
    }

    private void words(String words, String style) {
        text.append("<text x=\"%d\" y=\"%d\" style=\"%s\">%s</text>\n".formatted(MARGIN, y, style, Html.escape(words)));
    }

    /** A chart says how wide and high it is; within another picture it also needs its place. */
    private void chart(String caption, String svg) {
        String[] box = svg.replaceFirst("(?s).*?viewBox=\"0 0 (\\d+) (\\d+)\".*", "$1 $2")
                .split(" ", -1);
        y += GAP;
        for (String line : caption.split("(?<=;) ", -1)) {
            y += LINE_HEIGHT;
            words(line, "font: bold 15px Georgia, serif");
        }
        y += GAP;
        text.append(svg.replaceFirst(
                "<svg ",
                String.format(
                        Locale.ROOT, "<svg x=\"%d\" y=\"%d\" width=\"%s\" height=\"%s\" ", MARGIN, y, box[0], box[1])));
        y += Integer.parseInt(box[1]);
    }

    private static String styleOfCharts() throws IOException {
        try (InputStream in = HtmlReport.class.getResourceAsStream("report.css")) {
            List<String> rules = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            return rules.stream()
                    .filter(rule -> rule.matches("(text|line|polyline|rect|circle)\\b.*"))
                    .collect(Collectors.joining("\n", "", "\n"));
        }
    }
}
