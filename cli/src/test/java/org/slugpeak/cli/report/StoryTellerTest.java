package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.slugpeak.cli.report.Sessions.begin;
import static org.slugpeak.cli.report.Sessions.done;
import static org.slugpeak.cli.report.Sessions.nanos;
import static org.slugpeak.cli.report.Sessions.reading;
import static org.slugpeak.cli.report.Sessions.teller;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;

class StoryTellerTest {

    @Test
    void countsTheRoundsOfEachAdjuster() {
        SessionStory story = Sessions.wholeJob("a.jsonl");
        assertEquals(
                List.of(1, 1, 2, 2), story.turns().stream().map(Turn::round).toList());
        assertEquals(8.08, story.turns().get(0).gainDb());
        assertEquals(Optional.of(Adjuster.Action.DONE), story.turns().get(0).ending());
    }

    @Test
    void tellsTheUncertaintyOfTheBestInDecibels() {
        StoryTeller teller = teller("a");
        teller.take(Sessions.line(begin(0, "C1", 0.5)));
        teller.take(Sessions.line(reading(1, 1, 1)));
        teller.take(Sessions.line(done(2, "C1", 0.5, 1, Double.NaN)));
        assertEquals(0.0174, teller.story("").turns().get(0).sigmaDb(), 1e-4);
    }

    @Test
    void worksOutAGainThatTheLogDoesNotTell() {
        StoryTeller teller = teller("a");
        teller.take(Sessions.line(begin(0, "C1", -0.5)));
        teller.take(Sessions.line(reading(1, -1, -1)));
        Turn turn = teller.story("").turns().get(0);
        assertEquals(6.02, turn.gainDb(), 0.005);
        assertEquals(Optional.empty(), turn.ending(), "the log says neither done nor skipped");
    }

    @Test
    void nextBeginningClosesWhatWasOpen() {
        StoryTeller teller = teller("a");
        teller.take(Sessions.line(begin(0, "C1", 0.5)));
        teller.take(Sessions.line(reading(1, 1, 1)));
        teller.take(Sessions.line(begin(2, "C2", 1)));
        teller.take(Sessions.line(reading(3, 2, 2)));
        assertEquals(
                List.of("C1", "C2"),
                teller.story("").turns().stream().map(Turn::adjuster).toList());
    }

    @Test
    void saysTheSameWarningOnceAndCountsIt() {
        Notice notice = Sessions.wholeJob("a").notices().get(0);
        assertEquals("overload", notice.kind());
        assertEquals("over range: turn the generator down", notice.text());
        assertEquals(2, notice.times());
    }

    @Test
    void gathersEveryKindOfWarning() {
        StoryTeller teller = teller("a");
        teller.take(Sessions.line(begin(0, "T1 top", 1)));
        teller.take(new LogEntry(new TwoPeaks(1, 1, 0.9, 2.4), "two-peaks", ""));
        teller.take(new LogEntry(new NoPeak(2, NoPeakReason.END_OF_TRAVEL), "no-peak", ""));
        teller.take(new LogEntry(new Weak(3, 8), "weak", "turn the generator up"));
        teller.take(new LogEntry(new Drift(4, -0.012, "V"), "drift", ""));
        teller.take(new LogEntry(new Link.Changed(5, Link.State.LOST, new LinkDetail.Told("unplugged")), "link", ""));
        teller.take(new LogEntry(new Said.Note(6, "level: pencil mark at three o'clock"), "mark", ""));
        teller.take(new LogEntry(
                new Finding.Hinted(7, Hint.TURN_SLOWER, 2), "turn-slower", "turn 2 times slower for this meter"));
        List<String> told = teller.story("").notices().stream()
                .map(each -> each.kind() + ": " + each.text())
                .toList();
        assertEquals(
                List.of(
                        "two peaks: two maxima in one travel, 2.4 dB between them (T1 top)",
                        "no peak: end of travel (T1 top)",
                        "weak: turn the generator up (T1 top)",
                        "drift: the reading moves by -0.012 V/min with nothing turned",
                        "link: lost: unplugged",
                        "mark: level: pencil mark at three o'clock",
                        "turn slower: turn 2 times slower for this meter (T1 top)"),
                told);
    }

    /** A square detector: a quarter of the reading is half of the signal. */
    @Test
    void aCurveIsCountedByTheLawOfTheSession() {
        StoryTeller teller = teller("a");
        for (int i = 0; i <= 5; i++) {
            teller.take(Sessions.line(new CurveWork.LawStep(i, -3 * i, Math.pow(10, -6 * i / 20.0))));
        }
        teller.take(Sessions.line(new CurveWork.PointTaken(9, 460e3, 0.25)));
        assertEquals(0.5, teller.story("").curve().get(0).level(), 0.01);
    }

    @Test
    void curvePointsAreSortedAndNonsenseLeftOut() {
        StoryTeller teller = teller("a");
        teller.take(Sessions.line(new CurveWork.PointTaken(0, 460e3, 0.5)));
        teller.take(Sessions.line(new CurveWork.PointTaken(1, 450e3, 0.4)));
        teller.take(new LogEntry(new Logged(2, Logged.Topic.DAMAGED, 0.4), "curve-point", "abc"));
        assertEquals(
                List.of(new CurvePoint(450e3, 0.4), new CurvePoint(460e3, 0.5)),
                teller.story("").curve());
    }

    @Test
    void aStepThatWasTakenBackIsNeitherCountedNorDrawn() {
        StoryTeller teller = new StoryTeller(
                "a",
                new SessionStart(
                        1, Instant.EPOCH, "-", Measurand.DC_VOLTS, PeakSettings.defaults(), "slugpeak 0.1.0", true));
        teller.take(Sessions.line(reading(0, 0.5, 0.5)));
        teller.take(Sessions.line(reading(1, 0.6, 0.6)));
        teller.take(Sessions.line(reading(2, 7.9, 7.9)));
        teller.take(Sessions.line(new Said.Command(nanos(2), new Instruction.TakeBack())));
        Levels levels = teller.story("").levels();
        assertEquals(2, levels.count());
        assertEquals(Decibels.of(0.6), levels.courses().get(0).highest(), 1e-9);
        assertEquals(nanos(1), levels.lastNanos());
    }

    @Test
    void emptySessionHasAStoryToo() {
        SessionStory story = teller("a").story("the log stops after line 1");
        assertEquals(0, story.levels().count());
        assertEquals(0, story.lengthNanos());
    }
}
