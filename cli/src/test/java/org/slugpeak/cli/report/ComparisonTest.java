package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.curve.Estimate;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.Work;

class ComparisonTest {

    private static final SessionStart A_YEAR_LATER = new SessionStart(
            1,
            Sessions.START.startedAt().plus(Duration.ofDays(365)),
            "sim:tarnfield",
            Sessions.START.measurand(),
            PeakSettings.defaults(),
            "slugpeak 0.1.0");

    private static StoryTeller now() {
        return new StoryTeller("now.jsonl", A_YEAR_LATER);
    }

    private static SessionStory turned(StoryTeller teller, String plan, String adjuster, double gainDb) {
        if (!plan.isEmpty()) {
            teller.take(Sessions.plan(plan));
        }
        double after = Math.pow(10, gainDb / 20);
        teller.take(Sessions.line(Sessions.begin(0, adjuster, 1)));
        teller.take(Sessions.line(Sessions.reading(0, 1, 1)));
        teller.take(Sessions.line(Sessions.reading(1, after - 0.01, after)));
        teller.take(Sessions.line(Sessions.reading(2, after, after)));
        teller.take(Sessions.line(Sessions.done(2, adjuster, 1, after, gainDb)));
        return teller.story("");
    }

    private static Compared only(Comparison comparison) {
        assertEquals(1, comparison.figures().size(), comparison.figures()::toString);
        return comparison.figures().get(0);
    }

    /** Noise 2 mV and a last digit of 10 mV at 1 V and 1.2589 V (2 dB): worked by hand, 20 lg e = 8.6859 dB. */
    @Test
    void aGainIsKnownAsWellAsNoiseAndLastDigitLetBothItsLevelsBeKnown() {
        SessionStory story = turned(Sessions.teller("then"), "P", "T1", 2);
        double sigmaVolts = Math.hypot(0.002, 0.01 / Math.sqrt(12));
        double after = Math.pow(10, 0.1);
        double expected = 8.6859 * sigmaVolts * Math.hypot(1, 1 / after);
        Estimate gain = AdjusterFigures.gains(story).get("T1");
        assertEquals(2, gain.value(), 1e-9);
        assertEquals(expected, gain.sigma(), 1e-4 * expected + 2e-6);
    }

    @Test
    void whatDiffersByLessThanItsUncertaintyIsUnchangedAndWhatDiffersByMoreIsNot() {
        SessionStory then = turned(Sessions.teller("then"), "P", "T1", 2);
        assertEquals(Compared.Verdict.UNCHANGED, verdict(then, turned(now(), "P", "T1", 2.05)));
        assertEquals(Compared.Verdict.CHANGED, verdict(then, turned(now(), "P", "T1", 1.5)));
    }

    private static Compared.Verdict verdict(SessionStory then, SessionStory now) {
        return only(Comparison.of(then, now)).verdict();
    }

    @Test
    void whereNothingTellsHowWellAFigureIsKnownNoVerdictIsMadeUp() {
        assertEquals(
                Compared.Verdict.UNKNOWN,
                new Compared(
                                Compared.Part.ADJUSTER,
                                "T1",
                                "",
                                "dB",
                                java.util.Optional.of(new Estimate(1, Double.NaN)),
                                java.util.Optional.of(new Estimate(1, 0)))
                        .verdict());
    }

    @Test
    void adjustersOfOtherPlansAreNotComparedAndThatIsSaid() {
        Comparison comparison = Comparison.of(
                turned(Sessions.teller("then"), "Tarnfield 54A", "T1", 2), turned(now(), "Larkmoor 6C", "T1", 2));
        assertEquals(List.of(), comparison.figures());
        assertEquals(
                "adjusters are not compared: then Tarnfield 54A, now Larkmoor 6C",
                comparison.left().get(0));
    }

    @Test
    void withoutAPlanNamesAreTakenForTheSameAndThatIsSaid() {
        Comparison comparison = Comparison.of(turned(Sessions.teller("then"), "", "T1", 2), turned(now(), "", "T1", 2));
        assertEquals(Compared.Verdict.UNCHANGED, only(comparison).verdict());
        assertTrue(comparison.left().get(0).startsWith("no plan tells"), comparison.left()::toString);
    }

    @Test
    void anAdjusterThatOneSessionDidNotFinishIsNotCompared() {
        Compared figure = only(Comparison.of(turned(Sessions.teller("then"), "P", "T1", 2), cut("the log stops")));
        assertEquals(Compared.Verdict.ONLY_THEN, figure.verdict());
        assertTrue(MarkdownReport.of(
                        List.of(turned(Sessions.teller("then"), "P", "T1", 2), cut("the log stops")), Sessions.COVER)
                .contains("NOTE: now.jsonl: the log stops"));
        assertTrue(figure.change().isEmpty());
    }

    private static SessionStory cut(String ending) {
        StoryTeller cut = now();
        cut.take(Sessions.plan("P"));
        cut.take(Sessions.line(Sessions.begin(0, "T1", 1)));
        cut.take(Sessions.line(Sessions.reading(0, 1, 1)));
        return cut.story(ending);
    }

    @Test
    void roundsAreAddedAndTheLastOneTellsHowWellItIsFoundAgain() {
        Estimate gain = AdjusterFigures.gains(Sessions.wholeJob("a")).get("T2 top");
        assertEquals(8.14, gain.value(), 1e-9);
        assertTrue(gain.sigma() > 0.06 / Math.sqrt(3) && gain.sigma() < 0.1, gain::toString);
    }

    @Test
    void aDialIsComparedAsItWasLeftThenAndFoundNow() {
        StoryTeller then = Sessions.teller("then");
        then.take(Sessions.line(new Work.DialNoted(0, 1.4e6, 38_000, false)));
        then.take(Sessions.line(new Work.DialNoted(0, 1.4e6, 1_000, true)));
        StoryTeller now = now();
        now.take(Sessions.line(new Work.DialNoted(0, 1.4e6, 4_000, false)));
        now.take(Sessions.line(new Work.DialNoted(0, 1.4e6, 0, true)));
        Compared figure = only(Comparison.of(then.story(""), now.story("")));
        assertEquals(3, figure.change().getAsDouble(), 1e-9);
        assertEquals(2 * Math.sqrt(2.0 / 12), figure.uncertainty(), 1e-9, "both are read to 1 kHz");
        assertEquals(Compared.Verdict.CHANGED, figure.verdict());
    }

    @Test
    void theLastDigitOfADialIsTheFinestThatItShowsAndPointsTakenTwiceWidenIt() {
        List<DialError> points = List.of(
                new DialError(6.1e6, 0, false), new DialError(1e6, 500, false), new DialError(1e6, -500, false));
        assertEquals(1e5 / Math.sqrt(12), DialFigures.left(points).get(6.1e6).sigma(), 1e-6, "6.1 MHz");
        assertEquals(
                Math.hypot(100 / Math.sqrt(12), 500 / Math.sqrt(3)),
                DialFigures.left(points).get(1e6).sigma(),
                1e-6,
                "1000.5 and 999.5 kHz");
    }

    private static SessionStory curve(StoryTeller teller, double centreHz, double halfWidthHz) {
        for (int kHz = 430; kHz <= 480; kHz++) {
            double x = (kHz * 1e3 - centreHz) / halfWidthHz;
            teller.take(Sessions.line(new CurveWork.PointTaken(0, kHz * 1e3, 1 / (1 + x * x))));
        }
        return teller.story("");
    }

    /** (1 + x²) is 3 dB at x = 0.6423: a width of 1.2846 half-widths, by hand. */
    @Test
    void aCurveIsComparedByCentreAndWidthsWithinWhatItsPointsLetBeKnown() {
        SessionStory then = curve(Sessions.teller("then"), 455e3, 7e3);
        Estimate width = CurveFigures.of(then).get("width at -3 dB");
        assertEquals(1.2846 * 7e3, width.value(), 2 * width.sigma());
        assertTrue(width.sigma() < 100, width::toString);
        Comparison same = Comparison.of(then, curve(now(), 455.02e3, 7e3));
        assertEquals(
                List.of(true, true, true, true),
                same.figures().stream()
                        .map(each -> each.verdict() == Compared.Verdict.UNCHANGED)
                        .toList());
        Compared moved = Comparison.of(then, curve(now(), 457e3, 7e3)).figures().get(0);
        assertEquals("centre at -3 dB", moved.quantity());
        assertEquals(2, moved.change().getAsDouble(), moved.uncertainty());
        assertEquals(Compared.Verdict.CHANGED, moved.verdict());
    }

    @Test
    void logsInTheWrongOrderOrWithNothingInCommonAreSaid() {
        SessionStory later = turned(now(), "P", "T1", 2);
        assertTrue(Comparison.of(later, Sessions.teller("then").story(""))
                .left()
                .get(0)
                .startsWith("the first log is later"));
        List<String> left =
                Comparison.of(Sessions.teller("then").story(""), later).left();
        assertEquals(List.of("there is nothing that both logs tell and that can be compared"), left);
    }

    @Test
    void pageTextAndFiguresSayTheSame() {
        List<SessionStory> stories =
                List.of(turned(Sessions.teller("then.jsonl"), "P", "<T1|=1", 2), turned(now(), "P", "<T1|=1", 1.5));
        String page = HtmlReport.of(stories, Sessions.COVER);
        assertTrue(page.contains("<td>&lt;T1|=1</td><td>gained, all rounds</td><td>+2.00 dB</td><td>+1.50 dB</td>"
                + "<td>-0.50 dB</td><td>0.11 dB</td><td>changed</td>"));
        String text = MarkdownReport.of(stories, Sessions.COVER);
        assertTrue(text.contains(
                "| \\<T1\\|=1 | gained, all rounds | +2.00 dB | +1.50 dB | -0.50 dB | 0.11 dB | changed |"));
        assertTrue(text.contains("then: then.jsonl, 25 November 2026"));
        assertFalse(MarkdownReport.of(List.of(stories.get(0)), Sessions.COVER).contains("Then and now"));
    }

    @Test
    void aNameThatIsAFormulaStaysTextInTheFigures() {
        String csv = ComparisonCsv.of(
                Comparison.of(turned(Sessions.teller("then"), "P", "=1+2", 2), turned(now(), "Q,\"", "=1+2", 2)));
        assertTrue(csv.startsWith("part,name,quantity,unit,then,now,change,uncertainty,verdict\nnote,"), csv);
        assertTrue(ComparisonCsv.of(
                        Comparison.of(turned(Sessions.teller("then"), "P", "=1+2", 2), turned(now(), "P", "=1+2", 2)))
                .contains("adjuster,'=1+2,\"gained, all rounds\",dB,2.0,2.0,0.0,"));
    }

    @Test
    void whatWasSkippedHasNoGain() {
        StoryTeller teller = Sessions.teller("a");
        teller.take(Sessions.line(Sessions.begin(0, "T1", 1)));
        teller.take(Sessions.line(new Adjuster(1, "T1", Adjuster.Action.SKIP, 1, 1, 0)));
        assertTrue(AdjusterFigures.gains(teller.story("")).isEmpty());
    }
}
