package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.Limit;
import org.slugpeak.core.figure.Occasion;
import org.slugpeak.core.figure.OutputReading;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.SheetWork;

/** Two sheets whose figures are made up, so that what the report must say of them is known. */
class SheetReportTest {

    private static final SessionStart START = new SessionStart(
            1, Instant.EPOCH, "sim:plan", Measurand.AC_VOLTS, PeakSettings.defaults(), "slugpeak test");

    private static final Cover PLAIN = new Cover(Facts.none(), ZoneOffset.UTC, Cover.Paper.ANY, false, false);

    private static Figure figure(FigureKind kind, double value, double sigma) {
        return new Figure(kind, 1e6, value, sigma, Limit.NOISE, Figure.Outcome.MEASURED);
    }

    private static SheetWork.OutputTaken output(FigureKind kind, double hz, double emfVolts, double volts) {
        InputSetting setting = new InputSetting(hz, emfVolts, true, 1e6, Handwork.NONE, 0.4);
        return new SheetWork.OutputTaken(0, kind, setting, new OutputReading(volts, 1e-3, 1e-5));
    }

    private static List<SessionRecord> sheet(Occasion occasion, double sensitivityVolts, Figure... more) {
        List<SessionRecord> records = new ArrayList<>();
        Reading reading = Reading.of(0, 0.4);
        records.add(new SheetWork.Begun(0, new Conditions(occasion, 0.4, 3.2, "200 pF", 1)));
        records.add(new ReadingTaken(reading, 0.4, 0.4, 0, 1, Trend.STEADY));
        records.add(output(FigureKind.SENSITIVITY, 1e6, sensitivityVolts, 0.4));
        records.add(output(FigureKind.SENSITIVITY, 1e6, sensitivityVolts / 2, 0.2));
        for (int kHz = -8; kHz <= 8; kHz += 4) {
            if (kHz != 0) {
                double loss = Math.pow(10, Math.abs(kHz) / 8.0);
                records.add(output(FigureKind.WIDTH_6_DB, 1e6 + 1e3 * kHz, sensitivityVolts * loss, 0.4));
            }
        }
        records.add(output(FigureKind.AVC, 1e6, 0.1, 0.4));
        records.add(output(FigureKind.AVC, 1e6, 0.01, 0.2));
        records.add(new SheetWork.FigureTaken(0, figure(FigureKind.SENSITIVITY, sensitivityVolts, 0.1)));
        for (Figure each : more) {
            records.add(new SheetWork.FigureTaken(0, each));
        }
        return records;
    }

    private static SessionStory story(String name, List<SessionRecord> records) {
        StoryTeller teller = new StoryTeller(name, START);
        records.forEach(each -> teller.take(new LogEntry(each, "sheet", "")));
        return teller.story("");
    }

    private static final List<SessionRecord> BEFORE = sheet(
            Occasion.BEFORE,
            1e-4,
            figure(FigureKind.IMAGE_REJECTION, 26, 0.1),
            figure(FigureKind.WIDTH_6_DB, 10_000, 50),
            Figure.missing(FigureKind.AVC, 1e6));

    private static final List<SessionRecord> AFTER = sheet(
            Occasion.AFTER,
            1e-5,
            figure(FigureKind.IMAGE_REJECTION, 26.2, 0.1),
            figure(FigureKind.WIDTH_6_DB, 8_000, 50),
            figure(FigureKind.AVC, 59, 0.2));

    private static List<SessionStory> stories() {
        return List.of(story("before.jsonl", BEFORE), story("after.jsonl", AFTER));
    }

    /** 100 uV and 10 uV are 40 and 20 dB above 1 uV. */
    @Test
    void ofTwoJobsWhatWasLeftThenStandsBesideWhatIsFoundNow() {
        List<SessionStory> years = List.of(story("then.jsonl", AFTER), story("now.jsonl", BEFORE));
        List<String> told = Comparison.of(years.get(0), years.get(1)).figures().stream()
                .map(each -> each.quantity() + " " + each.unit() + " " + each.verdict())
                .toList();
        assertEquals(
                List.of(
                        "sensitivity dB(uV) CHANGED",
                        "image rejection dB UNCHANGED",
                        "width at 6 dB kHz CHANGED",
                        "AVC, fall of input for 10 dB of output dB ONLY_THEN"),
                told);
        String text = MarkdownReport.of(years, PLAIN);
        assertTrue(text.contains("| 1000 kHz | sensitivity | 20.00 dB(uV) | 40.00 dB(uV) | +20.00 dB(uV) |"), text);
        assertFalse(MarkdownReport.of(stories(), PLAIN).contains("Then and now"), "before and after are one job");
    }

    @Test
    void sheetsUnderOtherConditionsAreNotComparedAndThatIsSaid() {
        List<SessionRecord> other = new ArrayList<>(BEFORE);
        other.set(0, new SheetWork.Begun(0, new Conditions(Occasion.BEFORE, 0.8, 3.2, "200 pF", 1)));
        Comparison comparison = Comparison.of(story("then.jsonl", AFTER), story("now.jsonl", other));
        assertEquals(List.of(), comparison.figures());
        assertTrue(comparison.left().get(0).startsWith("sheets are not compared: then"), comparison.left()::toString);
    }

    @Test
    void eachFigureIsARowWithBeforeAfterAndChange() {
        List<List<String>> rows = SheetTables.of(stories()).get(0).rows();
        assertEquals(
                List.of(
                        List.of(
                                "sensitivity",
                                "1000 kHz",
                                "100 uV EMF +- 0.10 dB",
                                "10 uV EMF +- 0.10 dB",
                                "-20.0 dB",
                                "noise"),
                        List.of(
                                "image rejection",
                                "1000 kHz",
                                "26.0 dB +- 0.10 dB",
                                "26.2 dB +- 0.10 dB",
                                "+0.2 dB, within the uncertainty",
                                "noise"),
                        List.of(
                                "width at 6 dB",
                                "1000 kHz",
                                "10.00 kHz +- 0.05 kHz",
                                "8.00 kHz +- 0.05 kHz",
                                "-2.00 kHz",
                                "noise"),
                        List.of(
                                "AVC, fall of input for 10 dB of output",
                                "1000 kHz",
                                "not measured",
                                "59.0 dB +- 0.20 dB",
                                "",
                                "noise")),
                rows);
    }

    @Test
    void oneLogMayHoldBothSheets() {
        List<SessionRecord> both = new ArrayList<>(BEFORE);
        both.addAll(AFTER);
        assertEquals(
                SheetTables.of(stories()).get(0),
                SheetTables.of(List.of(story("both.jsonl", both))).get(0));
    }

    @Test
    void thePageDrawsBothCurvesAndSaysThemInWords() {
        String page = HtmlReport.of(stories(), PLAIN);
        assertTrue(
                page.contains("aria-label=\"Selectivity: before the work width at 6 dB 10.00 kHz; after the work"),
                page);
        assertTrue(page.contains("aria-label=\"Output against input: before the work"), page);
        assertTrue(page.contains("its level within 1 dB, counted in"), page);
        assertFalse(page.contains("NaN"), page);
    }

    @Test
    void theLossOfAPlaceIsTheInputThatItTakesMore() {
        String chart = SheetCharts.selectivity(stories());
        // 20 dB at 8 kHz either side: the axis ends there, and the signal itself stands in its middle, 1 dB below the
        // top.
        Axis down = new Axis(-20, 1, Plot.BOTTOM, Plot.TOP);
        double middle = (Plot.LEFT + Plot.RIGHT) / 2;
        assertTrue(chart.contains(String.format(Locale.ROOT, "%.1f,%.1f", middle, down.pixel(0))), chart);
        assertTrue(chart.contains(String.format(Locale.ROOT, "%.1f,%.1f", Plot.RIGHT, down.pixel(-20))), chart);
    }

    @Test
    void theTextHasTheSameTable() {
        String text = MarkdownReport.of(stories(), PLAIN);
        assertTrue(
                text.contains("| sensitivity | 1000 kHz | 100 uV EMF +- 0.10 dB | 10 uV EMF +- 0.10 dB | -20.0 dB |"),
                text);
    }

    @Test
    void figuresAreExportedWithTheirUnitsInPlaceOfTheReadingsBehindThem() {
        StringWriter out = new StringWriter();
        CsvExport export = new CsvExport(out);
        export.session("after.jsonl", START);
        AFTER.forEach(export::take);
        export.end();
        List<String> lines = out.toString().lines().toList();
        assertEquals(FigureLines.FIGURES.strip(), lines.get(0));
        assertEquals("sensitivity,1000000.0,after,1.0E-5,V EMF,0.1,dB,noise,measured,after.jsonl", lines.get(1));
        assertEquals("width-6-db,1000000.0,after,8000.0,Hz,50.0,Hz,noise,measured,after.jsonl", lines.get(3));
        assertEquals(5, lines.size());
    }

    @Test
    void aLogWithoutASheetHasNoneOfIt() {
        SessionStory none = story("work.jsonl", List.of());
        assertEquals(List.of(), SheetTables.of(List.of(none)));
        assertEquals("", SheetCharts.avc(List.of(none)));
    }
}
