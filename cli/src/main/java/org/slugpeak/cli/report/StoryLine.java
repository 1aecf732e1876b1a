package org.slugpeak.cli.report;

import java.util.Optional;
import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.DetailWords;
import org.slugpeak.cli.words.ReportPhrase;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Held;
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
import org.slugpeak.core.session.SheetWork;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.session.Work;

/**
 * In which words a report tells of a record; empty for what it shows in other ways, or not at all. Immutable.
 *
 * @param text words of the line of the log
 * @param present the adjuster that is being set; empty where none is
 */
record StoryLine(String text, String present)
        implements Families<Optional<String>>,
                Frame.Matcher<Optional<String>>,
                Finding.Matcher<Optional<String>>,
                Said.Matcher<Optional<String>>,
                Request.Matcher<Optional<String>>,
                Work.Matcher<Optional<String>> {

    /** In the words of the log. */
    private Optional<String> told() {
        return Optional.of(text + at());
    }

    private String at() {
        return present.isEmpty() ? "" : " (" + present + ")";
    }

    @Override
    public Optional<String> other(SessionRecord it) {
        return told();
    }

    @Override
    public Optional<String> logged(Logged it) {
        return switch (it.topic()) {
            case ASKED, TURN, HANDS_OFF, SET_GENERATOR, DAMAGED -> Optional.empty();
            case TOLD -> told();
        };
    }

    @Override
    public Optional<String> frame(Frame it) {
        return it.match(this);
    }

    @Override
    public Optional<String> finding(Finding it) {
        return it.match(this);
    }

    @Override
    public Optional<String> said(Said it) {
        return it.match(this);
    }

    @Override
    public Optional<String> request(Request it) {
        return it.match(this);
    }

    @Override
    public Optional<String> work(Work it) {
        return it.match(this);
    }

    @Override
    public Optional<String> curveWork(CurveWork it) {
        return it instanceof CurveWork.PointLeftOut ? told() : Optional.empty();
    }

    /** It stands in tables of its own. */
    @Override
    public Optional<String> sheetWork(SheetWork it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> caution(Caution it) {
        return it.match(new Cautions());
    }

    @Override
    public Optional<String> link(Link it) {
        if (it instanceof Link.Changed changed) {
            String detail = DetailWords.of(changed.detail());
            return Optional.of(CodeWords.of(changed.state().code()) + (detail.isEmpty() ? "" : ": " + detail));
        }
        return told();
    }

    @Override
    public Optional<String> sessionStart(SessionStart it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> readingTaken(ReadingTaken it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> sessionEnd(SessionEnd it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> passed(Passed it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> returned(Returned it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> held(Held it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> twoPeaks(TwoPeaks it) {
        return Optional.of(ReportPhrase.TWO_MAXIMA.of(it.dipDb(), at()));
    }

    @Override
    public Optional<String> noPeak(NoPeak it) {
        return Optional.of(CodeWords.of(it.reason().code()).replace('-', ' ') + at());
    }

    @Override
    public Optional<String> hinted(Finding.Hinted it) {
        return told();
    }

    @Override
    public Optional<String> furtherPast(Finding.FurtherPast it) {
        return told();
    }

    @Override
    public Optional<String> note(Said.Note it) {
        return Optional.of(it.text());
    }

    @Override
    public Optional<String> command(Said.Command it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> answer(Said.Answer it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> counted(Said.Counted it) {
        return told();
    }

    @Override
    public Optional<String> asked(Request.Asked it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> cutGenerator(Request.CutGenerator it) {
        return told();
    }

    @Override
    public Optional<String> generatorChanged(Request.GeneratorChanged it) {
        return told();
    }

    @Override
    public Optional<String> generatorUnchanged(Request.GeneratorUnchanged it) {
        return told();
    }

    @Override
    public Optional<String> checkOver(Request.CheckOver it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> checkDropped(Request.CheckDropped it) {
        return told();
    }

    @Override
    public Optional<String> setUp(Request.SetUp it) {
        return told();
    }

    @Override
    public Optional<String> undamp(Request.Undamp it) {
        return told();
    }

    @Override
    public Optional<String> turn(Request.Turn it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> handsOff(Request.HandsOff it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> setGenerator(Request.SetGenerator it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> setInput(Request.SetInput it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> generatorStands(Request.GeneratorStands it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> generatorFails(Request.GeneratorFails it) {
        return Optional.of(it.detail());
    }

    @Override
    public Optional<String> adjuster(Adjuster it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> planBegun(Work.PlanBegun it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> pathBegun(Work.PathBegun it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> handEffect(Work.HandEffect it) {
        return told();
    }

    @Override
    public Optional<String> swept(Work.Swept it) {
        return told();
    }

    @Override
    public Optional<String> roundEnded(Work.RoundEnded it) {
        return told();
    }

    @Override
    public Optional<String> wentBack(Work.WentBack it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> planOver(Work.PlanOver it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> dialNoted(Work.DialNoted it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> nothingToTakeBack(Work.NothingToTakeBack it) {
        return told();
    }

    /** What was to be known of the signal. */
    private final class Cautions implements Caution.Matcher<Optional<String>> {

        @Override
        public Optional<String> overload(Overload it) {
            return Optional.of(CodeWords.of(it.cause().code()).replace('-', ' ') + ": " + text + at());
        }

        @Override
        public Optional<String> overloadCleared(OverloadCleared it) {
            return Optional.empty();
        }

        @Override
        public Optional<String> weak(Weak it) {
            return told();
        }

        @Override
        public Optional<String> drift(Drift it) {
            return Optional.of(ReportPhrase.DRIFTS.of(it.perMinute(), it.unit()));
        }

        @Override
        public Optional<String> settled(Caution.Settled it) {
            return told();
        }

        @Override
        public Optional<String> suspected(Caution.Suspected it) {
            return told();
        }

        @Override
        public Optional<String> noLongerSuspected(Caution.NoLongerSuspected it) {
            return told();
        }

        @Override
        public Optional<String> widePeak(Caution.WidePeak it) {
            return told();
        }

        @Override
        public Optional<String> restMissing(Caution.RestMissing it) {
            return told();
        }

        @Override
        public Optional<String> slowReadings(Caution.SlowReadings it) {
            return told();
        }

        @Override
        public Optional<String> windowMissed(Caution.WindowMissed it) {
            return told();
        }

        @Override
        public Optional<String> checked(Caution.Checked it) {
            return told();
        }
    }
}
