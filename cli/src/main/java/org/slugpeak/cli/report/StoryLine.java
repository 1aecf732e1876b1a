package org.slugpeak.cli.report;

import java.util.Locale;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.session.Work;

/** What each line adds; whether it adds any is given only because the matcher wants a value. */
final class StoryLine
        implements Families<Boolean>,
                Frame.Matcher<Boolean>,
                Finding.Matcher<Boolean>,
                Said.Matcher<Boolean>,
                Request.Matcher<Boolean>,
                Work.Matcher<Boolean> {

    private final StoryTeller story;
    private final String word;
    private final String text;

    StoryLine(StoryTeller story, String word, String text) {
        this.story = story;
        this.word = word;
        this.text = text;
    }

    /** Told in the words of the log. */
    private boolean told(SessionRecord it) {
        return add(it, text + at());
    }

    private boolean add(SessionRecord it, String words) {
        story.notice(it.tNanos(), word.replace('-', ' '), words);
        return true;
    }

    private String at() {
        return story.present().isEmpty() ? "" : " (" + story.present() + ")";
    }

    @Override
    public Boolean other(SessionRecord it) {
        return told(it);
    }

    @Override
    public Boolean logged(Logged it) {
        return switch (it.topic()) {
            case ASKED, TURN, HANDS_OFF, SET_GENERATOR, DAMAGED -> false;
            case TOLD -> told(it);
        };
    }

    @Override
    public Boolean frame(Frame it) {
        return it.match(this);
    }

    @Override
    public Boolean finding(Finding it) {
        return it.match(this);
    }

    @Override
    public Boolean said(Said it) {
        return it.match(this);
    }

    @Override
    public Boolean request(Request it) {
        return it.match(this);
    }

    @Override
    public Boolean work(Work it) {
        return it.match(this);
    }

    @Override
    public Boolean curveWork(CurveWork it) {
        if (it instanceof CurveWork.PointTaken point) {
            story.point(new CurvePoint(point.hz(), point.level()));
            return true;
        }
        return it instanceof CurveWork.PointLeftOut && told(it);
    }

    @Override
    public Boolean caution(Caution it) {
        return it.match(new Cautions());
    }

    @Override
    public Boolean link(Link it) {
        if (it instanceof Link.Changed changed) {
            String detail = changed.detail().isEmpty() ? "" : ": " + changed.detail();
            return add(it, changed.state().code() + detail);
        }
        return told(it);
    }

    @Override
    public Boolean sessionStart(SessionStart it) {
        return false;
    }

    @Override
    public Boolean readingTaken(ReadingTaken it) {
        story.reading(it);
        return true;
    }

    @Override
    public Boolean sessionEnd(SessionEnd it) {
        return false;
    }

    @Override
    public Boolean passed(Passed it) {
        return false;
    }

    @Override
    public Boolean returned(Returned it) {
        return false;
    }

    @Override
    public Boolean held(Held it) {
        return false;
    }

    @Override
    public Boolean twoPeaks(TwoPeaks it) {
        return add(
                it, String.format(Locale.ROOT, "two maxima in one travel, %.1f dB between them%s", it.dipDb(), at()));
    }

    @Override
    public Boolean noPeak(NoPeak it) {
        return add(it, it.reason().code().replace('-', ' ') + at());
    }

    @Override
    public Boolean hinted(Finding.Hinted it) {
        return told(it);
    }

    @Override
    public Boolean furtherPast(Finding.FurtherPast it) {
        return told(it);
    }

    @Override
    public Boolean note(Said.Note it) {
        return add(it, it.text());
    }

    @Override
    public Boolean command(Said.Command it) {
        if (it.instruction() instanceof Instruction.TakeBack) {
            story.takeBack();
        }
        return true;
    }

    @Override
    public Boolean answer(Said.Answer it) {
        story.safety(it.text());
        return true;
    }

    @Override
    public Boolean asked(Request.Asked it) {
        return false;
    }

    @Override
    public Boolean cutGenerator(Request.CutGenerator it) {
        return told(it);
    }

    @Override
    public Boolean generatorChanged(Request.GeneratorChanged it) {
        return told(it);
    }

    @Override
    public Boolean generatorUnchanged(Request.GeneratorUnchanged it) {
        return told(it);
    }

    @Override
    public Boolean checkOver(Request.CheckOver it) {
        return false;
    }

    @Override
    public Boolean checkDropped(Request.CheckDropped it) {
        return told(it);
    }

    @Override
    public Boolean setUp(Request.SetUp it) {
        return told(it);
    }

    @Override
    public Boolean undamp(Request.Undamp it) {
        return told(it);
    }

    @Override
    public Boolean turn(Request.Turn it) {
        return false;
    }

    @Override
    public Boolean handsOff(Request.HandsOff it) {
        return false;
    }

    @Override
    public Boolean setGenerator(Request.SetGenerator it) {
        return false;
    }

    @Override
    public Boolean adjuster(Adjuster it) {
        story.adjuster(it);
        return true;
    }

    @Override
    public Boolean planBegun(Work.PlanBegun it) {
        story.plan(it.name());
        return true;
    }

    @Override
    public Boolean handEffect(Work.HandEffect it) {
        return told(it);
    }

    @Override
    public Boolean swept(Work.Swept it) {
        return told(it);
    }

    @Override
    public Boolean roundEnded(Work.RoundEnded it) {
        return told(it);
    }

    @Override
    public Boolean wentBack(Work.WentBack it) {
        return false;
    }

    @Override
    public Boolean planOver(Work.PlanOver it) {
        return false;
    }

    @Override
    public Boolean dialNoted(Work.DialNoted it) {
        story.dial(new DialError(it.signalHz(), it.errorHz(), it.after()));
        return true;
    }

    @Override
    public Boolean nothingToTakeBack(Work.NothingToTakeBack it) {
        return told(it);
    }

    /** What was to be known of the signal. */
    private final class Cautions implements Caution.Matcher<Boolean> {

        @Override
        public Boolean overload(Overload it) {
            return add(it, it.cause().code().replace('-', ' ') + ": " + text + at());
        }

        @Override
        public Boolean overloadCleared(OverloadCleared it) {
            return false;
        }

        @Override
        public Boolean weak(Weak it) {
            return told(it);
        }

        @Override
        public Boolean drift(Drift it) {
            return add(
                    it,
                    String.format(
                            Locale.ROOT,
                            "the reading moves by %+.2g %s/min with nothing turned",
                            it.perMinute(),
                            it.unit()));
        }

        @Override
        public Boolean settled(Caution.Settled it) {
            return told(it);
        }

        @Override
        public Boolean suspected(Caution.Suspected it) {
            return told(it);
        }

        @Override
        public Boolean noLongerSuspected(Caution.NoLongerSuspected it) {
            return told(it);
        }

        @Override
        public Boolean widePeak(Caution.WidePeak it) {
            return told(it);
        }

        @Override
        public Boolean restMissing(Caution.RestMissing it) {
            return told(it);
        }

        @Override
        public Boolean slowReadings(Caution.SlowReadings it) {
            return told(it);
        }

        @Override
        public Boolean checked(Caution.Checked it) {
            return told(it);
        }
    }
}
