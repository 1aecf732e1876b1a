package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.cli.words.ReportFact;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionStart;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class HtmlReportTest {

    private static final Pattern SVG = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);

    private static List<Document> chartsOf(String page) throws Exception {
        List<Document> charts = new java.util.ArrayList<>();
        Matcher matcher = SVG.matcher(page);
        while (matcher.find()) {
            charts.add(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(matcher.group()))));
        }
        return charts;
    }

    @Test
    void saysWhatWasDone() {
        String page = HtmlReport.of(List.of(Sessions.wholeJob("evening.jsonl")), Sessions.COVER);
        for (String said : List.of(
                "<h1>Alignment report: Tarnfield 54A</h1>",
                "25 November 2026, 09:00 UTC, 1:20 long",
                "AM IF: gained +9.20 dB in 4 adjustments",
                "<td>T2 top</td><td>1</td><td>+0.00 dB</td><td>+8.08 dB</td><td>+8.08 dB</td><td>+8.08 dB</td>",
                "<td>chassis: mains transformer</td>",
                "<td>over range: turn the generator down</td><td>2 x</td>",
                "<td>1400 kHz</td><td>+38.0 kHz (+2.71 %)</td><td>+0.0 kHz (+0.00 %)</td>",
                "<td>source</td><td>sim:tarnfield</td>",
                "800 in 1:20, 9.988 a second")) {
            assertTrue(page.contains(said), () -> "no '" + said + "' in\n" + page);
        }
    }

    @Test
    void needsNothingFromOutside() {
        String page = HtmlReport.of(List.of(Sessions.wholeJob("a")), Sessions.COVER);
        assertFalse(page.contains("src="));
        assertFalse(page.contains("href="));
        assertFalse(page.contains("@import"));
        assertFalse(page.contains("url("));
        assertFalse(page.contains("<script"));
    }

    @Test
    void chartsAreWellFormedAndThreeOfThem() throws Exception {
        List<Document> charts = chartsOf(HtmlReport.of(List.of(Sessions.wholeJob("a")), Sessions.COVER));
        assertEquals(
                List.of(
                        "Gain of each adjuster in dB",
                        "Level over time in dB above the level as found, with the generator as it stood then",
                        "Response against generator frequency"),
                charts.stream()
                        .map(each -> each.getElementsByTagName("title").item(0).getTextContent())
                        .toList());
        assertEquals(2, charts.get(0).getElementsByTagName("rect").getLength(), "a bar for each adjuster");
    }

    @Test
    void everyTextIsMadeHarmless() throws Exception {
        String nasty = "<script>alert('x')</script>&\"\u0000\u001b";
        StoryTeller teller = Sessions.teller(nasty);
        teller.take(Sessions.plan(nasty));
        teller.take(Sessions.safety(nasty));
        teller.take(Sessions.told(0, nasty, nasty));
        teller.take(Sessions.line(Sessions.begin(0, nasty, 0.5)));
        teller.take(Sessions.line(Sessions.reading(1, 1, 1)));
        teller.take(Sessions.line(Sessions.reading(2, 1, 1)));
        String page = HtmlReport.of(List.of(teller.story(nasty)), Sessions.COVER);
        assertFalse(page.contains("<script"));
        assertFalse(page.contains("\u0000") || page.contains("\u001b"));
        assertEquals(2, chartsOf(page).size());
    }

    @Test
    void severalSessionsShareOnePageAndOneCurveChart() throws Exception {
        String page = HtmlReport.of(List.of(Sessions.wholeJob("before"), Sessions.wholeJob("after")), Sessions.COVER);
        assertEquals(3, page.split("<section>", -1).length - 1, "what has changed, and both");
        Document curves = chartsOf(page).get(4);
        assertEquals(2, curves.getElementsByTagName("polyline").getLength());
    }

    /** A discriminator's levels have two signs, which decibels cannot show. */
    @Test
    void aCurveWithAZeroIsDrawnInPercentOfItsHighest() {
        StoryTeller teller = Sessions.teller("a");
        for (int kHz = -10; kHz <= 10; kHz++) {
            double x = kHz / 5.0;
            teller.take(Sessions.line(new CurveWork.PointTaken(0, 10_700_000 + kHz * 20e3, x / (1 + x * x))));
        }
        String page = HtmlReport.of(List.of(teller.story("")), Sessions.COVER);
        assertTrue(page.contains(">-100 %<") && page.contains(">100 %<"), page);
        assertFalse(page.contains("NaN"));
    }

    @Test
    void sessionWithoutReadingsIsTold() {
        String page = HtmlReport.of(List.of(Sessions.teller("a").story("the log stops after line 1")), Sessions.COVER);
        assertTrue(page.contains("NOTE: the log stops after line 1"));
        assertFalse(page.contains("<svg"));
    }

    @Test
    void untrustedReadingsAreCountedAndNotDrawn() {
        StoryTeller teller = Sessions.teller("a");
        teller.take(Sessions.line(Sessions.reading(1, 1, 1)));
        teller.take(Sessions.line(Sessions.overRange(2)));
        teller.take(Sessions.line(Sessions.overRange(3)));
        teller.take(Sessions.line(Sessions.reading(4, 0.9, 1)));
        String page = HtmlReport.of(List.of(teller.story("")), Sessions.COVER);
        assertTrue(page.contains("<td>2 over-range</td>"), page);
        assertFalse(page.contains("NaN"));
    }

    /** An hour at fifty a second must not make a page that a browser chokes on. */
    @Test
    void longSessionMakesASmallPage() {
        StoryTeller teller = Sessions.teller("a");
        for (int i = 0; i < 180_000; i++) {
            teller.take(Sessions.line(Sessions.reading(i / 50.0, 1 + 0.5 * Math.sin(i / 500.0), 1.5)));
        }
        assertTrue(HtmlReport.of(List.of(teller.story("")), Sessions.COVER).length() < 60_000);
    }

    @Test
    void theCourseOfTheWorkIsPrintedAndTheSimulatedSetHasItsName() {
        SessionStart start = new SessionStart(
                1, Instant.EPOCH, "sim", Measurand.DC_VOLTS, PeakSettings.defaults(), "slugpeak 0.1.0");
        StoryTeller teller = new StoryTeller("demo.jsonl", start);
        teller.take(new LogEntry(new Said.Note(0, "from the detector back"), "mark", ""));
        Caution.Suspected hum = new Caution.Suspected(0, Suspicion.HUM, 0.1);
        teller.take(new LogEntry(hum, "possible-hum", "possible: mains hum"));
        String page = HtmlReport.of(List.of(teller.story("")), Sessions.COVER);
        assertTrue(page.contains("<h1>Alignment report: Tarnfield 54A, simulated</h1>"), page);
        assertFalse(page.contains("<details>"), "paper cannot be unfolded");
        String course = page.substring(page.indexOf("<caption>Course of the work</caption>"));
        assertTrue(course.contains("from the detector back") && !course.contains("mains hum"), course);
    }

    /** Who hears the page needs headings that say what they head, drawings with words, and the language (WCAG 2.1: 1.1.1, 1.3.1, 3.1.1). */
    @Test
    void isReadAloudAsItIsSeen() {
        String page = HtmlReport.of(List.of(Sessions.wholeJob("a")), Sessions.COVER);
        int tables = page.split("<table", -1).length;
        assertEquals(tables, page.split("<caption>", -1).length, "each table says what it is");
        assertEquals(tables, page.split("<thead>", -1).length, "headings stand on each page");
        assertFalse(page.contains("<th scope=\"col\"></th>"), "no column without a heading");
        assertTrue(page.contains("<html lang=\"en\">"), page);
        assertEquals(page.split("<svg ", -1).length, page.split("role=\"img\" aria-label=\"", -1).length);
    }

    @Test
    void theFirstPageSaysWhatWasGivenAndNothingElse() {
        Facts facts = new Facts(Map.of(ReportFact.SERIAL, "20417 <b>", ReportFact.OWNER, " "));
        String page = HtmlReport.of(
                List.of(Sessions.wholeJob("a")),
                new Cover(facts, ZoneId.of("Europe/Vienna"), Cover.Paper.A4, true, false));
        assertTrue(page.contains("<td>serial number</td><td>20417 &lt;b&gt;</td>"), page);
        assertTrue(page.indexOf("20417") < page.indexOf("<section>"), "before everything else");
        assertFalse(page.contains("<td>owner</td>"), "an empty text was not given");
        assertTrue(page.contains("25 November 2026, 10:00 CET"), page);
        assertTrue(page.contains("@page { size: A4;") && page.contains("<body class=\"large\">"), page);
    }

    @Test
    void whatIsStillToBeLookedAtStandsBeforeTheCharts() {
        StoryTeller teller = Sessions.teller("a");
        teller.take(Sessions.overload(1));
        teller.take(Sessions.line(Sessions.begin(2, "C7", 1)));
        teller.take(Sessions.line(new Adjuster(3, "C7", Adjuster.Action.SKIP, 1, 1, Double.NaN)));
        String page = HtmlReport.of(List.of(teller.story("")), Sessions.COVER);
        String remaining = page.substring(page.indexOf("Still to be looked at"), page.indexOf("Adjusters</caption>"));
        assertTrue(remaining.contains("turn the generator down") && remaining.contains("C7 was skipped"), remaining);
    }

    @Test
    void whatWasPutRightIsNotToBeLookedAt() {
        StoryTeller teller = Sessions.teller("a");
        teller.take(Sessions.overload(1));
        teller.take(Sessions.line(new OverloadCleared(2)));
        teller.take(Sessions.line(Sessions.begin(2, "C7", 1)));
        teller.take(Sessions.line(new Adjuster(3, "C7", Adjuster.Action.SKIP, 1, 1, Double.NaN)));
        teller.take(Sessions.line(Sessions.begin(4, "C7", 1)));
        teller.take(Sessions.line(Sessions.done(5, "C7", 1, 2, 6.02)));
        assertEquals(List.of(), teller.story("").warnings());
    }
}
