package org.slugpeak.cli.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.cli.display.Sessions.reading;
import static org.slugpeak.cli.display.Sessions.seconds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.cli.display.Sessions;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.Work;

class TalkerTest {

    private final List<String> spoken = new ArrayList<>();

    private final Speech speech = new Speech() {
        @Override
        public void word(String text) {
            spoken.add("! " + text);
        }

        @Override
        public void sentence(String text) {
            spoken.add(text);
        }

        @Override
        public void dropSentence() {
            spoken.add("-");
        }
    };

    private Talker talker(boolean withTone) {
        Talker talker = new Talker(speech, withTone, true);
        talker.take(Sessions.start(Seek.PEAK));
        talker.take(new Adjuster(0, "T2 top", Adjuster.Action.BEGIN, 0.5, Double.NaN, Double.NaN));
        talker.take(reading(0, 0.5, 0.5, Trend.STEADY));
        spoken.clear();
        return talker;
    }

    @Test
    void oneAdjusterIsHeardFromTheWrongWayToTheNext() {
        Talker talker = talker(false);
        talker.take(new Finding.Hinted(seconds(1), Hint.WRONG_WAY, 0.4));
        talker.take(reading(2, 1.0, 1.0, Trend.RISING));
        talker.take(reading(3, 0.966, 1.0, Trend.FALLING));
        talker.take(new Passed(seconds(3), 1.0, seconds(2), 0.3));
        talker.take(reading(3.5, 0.977, 1.0, Trend.RISING));
        talker.take(new Returned(seconds(4), 1.0, 0));
        talker.take(new Held(seconds(6), 1.0, 0));
        talker.take(new Adjuster(seconds(7), "T1 top", Adjuster.Action.BEGIN, 1, Double.NaN, Double.NaN));
        assertEquals(
                List.of("! other way", "! back, 3 tenths", "back, 2 tenths", "! stop", "! held", "now: T1 top"),
                spoken);
    }

    @Test
    void noSentenceIsSpokenOverAToneThatIsListenedTo() {
        Talker talker = talker(true);
        talker.take(reading(1, 0.6, 0.6, Trend.RISING));
        talker.take(new Finding.Hinted(seconds(1), Hint.WRONG_WAY, 0.4));
        talker.take(new Request.GeneratorUnchanged(seconds(1.5)));
        talker.take(reading(2, 0.7, 0.7, Trend.RISING));
        assertEquals(
                List.of("! other way"),
                spoken.stream().filter(it -> !it.equals("-")).toList());
        talker.take(reading(3, 0.7, 0.7, Trend.STEADY));
        assertEquals(
                "the reading did not change: announce a cut first, then make it within 6 seconds",
                spoken.get(spoken.size() - 1));
    }

    @Test
    void ofSentencesThatHadToWaitOnlyTheLastIsSpoken() {
        Talker talker = talker(true);
        talker.take(reading(1, 0.6, 0.6, Trend.RISING));
        talker.take(new Request.GeneratorUnchanged(seconds(1)));
        talker.take(new Request.GeneratorChanged(seconds(2), -6));
        talker.take(reading(3, 0.6, 0.6, Trend.STEADY));
        assertEquals(
                List.of("the reading followed the generator by -6 decibels: the best goes on"),
                spoken.stream().filter(it -> !it.equals("-")).toList());
    }

    @Test
    void whatIsAskedIsSpokenInFullAndAnAlarmAtOnce() {
        Talker talker = talker(true);
        talker.take(new Request.Asked(seconds(1), CheckKind.LEVEL, 0));
        talker.take(new Overload(seconds(2), Overload.Cause.CLIPPING, Double.NaN));
        talker.take(new Link.Changed(seconds(3), Link.State.STALE, new LinkDetail.Told("no reading for 2.0 s")));
        assertEquals(
                List.of(
                        "please: halve the generator",
                        "! overload, clipping: turn the generator or the input level down",
                        "! no new readings: no reading for 2 seconds + overload, clipping: turn the generator or the input"
                                + " level down"),
                spoken);
    }

    @Test
    void whatIsAskedIsNotCutOffByARemark() {
        Talker talker = talker(true);
        talker.take(new Request.Asked(seconds(1), CheckKind.LEVEL, 0));
        talker.take(new Said.Note(seconds(1), "meter at detector"));
        assertEquals(List.of("please: halve the generator"), spoken);
    }

    @Test
    void whatAnAdjusterGainedIsNotCutOffByTheRoundThatEndsWithIt() {
        Talker talker = talker(false);
        talker.take(new Adjuster(seconds(3), "T2 top", Adjuster.Action.DONE, 0.5, 0.7, 2.92));
        talker.take(new Adjuster(seconds(4), "T1 top", Adjuster.Action.BEGIN, 0.7, Double.NaN, Double.NaN));
        talker.take(new Adjuster(seconds(9), "T1 top", Adjuster.Action.DONE, 0.7, 0.8, 1.16));
        talker.take(new Work.PathBegun(seconds(9), "AM IF"));
        talker.take(new Request.Asked(seconds(9), CheckKind.REST, 0));
        assertEquals(
                "T1 top done, +1.2 decibels. please: turn the generator's output off, its mains left on",
                spoken.get(spoken.size() - 1));
        assertEquals("now: T1 top", spoken.get(1), "not with what was told a second ago");
    }

    /** A word is not cut off by a sentence. */
    @Test
    void howAHandGoesToATerminalIsSpokenLikeAWord() {
        Talker talker = talker(false);
        talker.take(new Request.Undamp(seconds(3), new Damping("T1 bottom", 22e3)));
        talker.take(new Request.Asked(seconds(4), CheckKind.REST, 0));
        assertTrue(spoken.get(0).startsWith("! set OFF, unplug"), spoken::toString);
        assertTrue(spoken.get(0).endsWith("set ON. then press r"), "and the key for it: " + spoken);
        assertEquals("please: turn the generator's output off, its mains left on", spoken.get(1));
    }

    @Test
    void whoListensToARecordIsToldNoKey() {
        Talker talker = new Talker(speech, false, false);
        talker.take(Sessions.start(Seek.PEAK));
        talker.take(new Request.Undamp(seconds(3), new Damping("T1 bottom", 22e3)));
        assertTrue(spoken.get(spoken.size() - 1).endsWith("set ON"), spoken::toString);
    }

    @Test
    void howAdjustersAreTurnedIsSpokenBeforeTheFirstThingThatIsAsked() {
        Talker talker = new Talker(speech, true, true);
        talker.take(Sessions.start(Seek.PEAK));
        talker.take(new Said.Answer(0, "chassis: transformer"));
        talker.take(new Said.Answer(0, "insulated tool, one hand"));
        talker.take(new Request.Asked(0, CheckKind.REST, 0));
        assertEquals(
                "insulated tool, one hand. please: turn the generator's output off, its mains left on",
                spoken.get(spoken.size() - 1));
    }

    @Test
    void aPointOfACurveIsSpokenTogetherWithTheNextSetting() {
        Talker talker = talker(true);
        talker.take(new Request.SetGenerator(seconds(1), 440e3, 1, 3, true, Optional.empty()));
        talker.take(new CurveWork.PointTaken(seconds(9), 440e3, 0.487));
        talker.take(new Request.SetGenerator(seconds(9), 441e3, 2, 3, true, Optional.empty()));
        talker.take(reading(10, 0.5, 0.5, Trend.STEADY).uncompared());
        assertEquals(
                List.of(
                        "generator to 440 kilohertz, 1 of 3",
                        "440 kilohertz reads 0.487 volts. generator to 441 kilohertz, 2 of 3"),
                spoken);
    }

    @Test
    void whoHasNothingToDoAtACurveHearsOnlyItsEnd() {
        Talker talker = talker(true);
        for (int point = 1; point <= 3; point++) {
            talker.take(new Request.SetGenerator(seconds(point), 440e3, point, 3, false, Optional.empty()));
            talker.take(new CurveWork.PointTaken(seconds(point + 1), 440e3, 0.487));
        }
        talker.take(new CurveWork.CurveOver(seconds(4)));
        assertEquals(List.of("440 kilohertz reads 0.487 volts. the curve is complete"), spoken);
    }

    @ParameterizedTest
    @CsvSource({
        "0.04,'back, less than a tenth'",
        "0.1,'back, one tenth'",
        "0.34,'back, 3 tenths'",
        "0.97,'back, one decibel'",
        "2.04,'back, 2.0 decibels'",
        "2.31,'back, 2.3 decibels'",
        "60,back",
        "NaN,back"
    })
    void decibelsAreCountedAsPeopleCountThem(double distanceDb, String said) {
        assertEquals(said, Pronunciation.back(distanceDb));
    }

    @ParameterizedTest
    @CsvSource({
        "'generator 455 kHz, reading 0.5 to 1.5 V','generator 455 kilohertz, reading 0.5 to 1.5 volts'",
        "'put 22 kohm across T1 secondary; hands away','put 22 kilo ohms across T1 secondary. hands away'",
        "'the peak is 0.91 V (+-0.002)','the peak is 0.91 volts, plus or minus 0.002'",
        "'440.00 kHz reads 0.4870 V','440 kilohertz reads 0.487 volts'",
        "'10.05 V, then 100 V and 0.50 V.','10.05 volts, then 100 volts and 0.5 volts.'",
        "'through 0.05 uF, 200 pF to 30 uV','through 0.05 microfarads, 200 picofarads to 30 microvolts'",
        "'at 192.168.1.20','at 192.168.1.20'",
        "'is it live (AC/DC set)? (live, unknown)','is it live, AC/DC set? live, unknown'",
        "'5 Very small','5 Very small'"
    })
    void unitsAreSpokenInFull(String written, String said) {
        assertEquals(said, Pronunciation.of(written));
    }
}
