package org.slugpeak.cli.moment;

import java.util.Optional;
import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.DetailWords;
import org.slugpeak.cli.words.EndWords;
import org.slugpeak.cli.words.EventPhrase;
import org.slugpeak.cli.words.Frequencies;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Families;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Manner;
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
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.session.Work;

/** Says each event in one short sentence; a plain reading is no event. One thread at a time. */
final class EventWords
        implements Families<Optional<String>>, Frame.Matcher<Optional<String>>, Finding.Matcher<Optional<String>> {

    private final RecordSentences sentences = new RecordSentences();
    private final Signals signals = new Signals();
    private final Persons persons = new Persons();

    private Seek seek = Seek.PEAK;
    private String unit = "";

    @Override
    public Optional<String> sessionStart(SessionStart it) {
        seek = it.settings().seek();
        unit = it.measurand().unit();
        String nearer = words().nearer();
        String begun = EventPhrase.BEGUN.of(it.measurand().quantity(), it.source());
        // A peak is what everybody looks for, except in a curve, where nothing is looked for at all.
        return Optional.of(
                nearer.isEmpty() ? begun : begun + ", " + EventPhrase.SOUGHT.of(CodeWords.of(seek.code()), nearer));
    }

    @Override
    public Optional<String> passed(Passed it) {
        return Optional.of(it.back()
                .map(back -> words().stepsBack(back, it.dropDb(), unit))
                .orElseGet(() -> words().past(it.dropDb())));
    }

    private SeekWords words() {
        return SeekWords.of(seek);
    }

    @Override
    public Optional<String> returned(Returned it) {
        return Optional.of(words().returned(it.lossDb()));
    }

    static String lost(double lossDb) {
        return lossDb >= 0.005 ? EventPhrase.SHORT.of(Figures.decibels(lossDb)) : "";
    }

    @Override
    public Optional<String> held(Held it) {
        return say(EventPhrase.HELD, Figures.of(it.value(), it.value(), unit), lost(it.lossDb()));
    }

    @Override
    public Optional<String> twoPeaks(TwoPeaks it) {
        boolean firstIsHigher = Math.abs(it.first()) >= Math.abs(it.second());
        String higher = (firstIsHigher ? EventPhrase.FIRST : EventPhrase.SECOND).of();
        return say(EventPhrase.TWO_PEAKS, Figures.decibels(it.dipDb()), higher);
    }

    @Override
    public Optional<String> noPeak(NoPeak it) {
        return Optional.of(noPeak(it.reason(), CodeWords.of(seek.code())));
    }

    private static String noPeak(NoPeakReason reason, String sought) {
        return switch (reason) {
            case FLAT -> EventPhrase.FLAT.of(sought);
            case END_OF_TRAVEL -> EventPhrase.END_OF_TRAVEL.of(sought);
            case REVERSED -> EventPhrase.REVERSED.of(sought);
            case DEAD_ZERO -> EventPhrase.DEAD_ZERO.of();
        };
    }

    @Override
    public Optional<String> hinted(Finding.Hinted it) {
        return told(it);
    }

    @Override
    public Optional<String> furtherPast(Finding.FurtherPast it) {
        return told(it);
    }

    @Override
    public Optional<String> readingTaken(ReadingTaken it) {
        return Optional.empty();
    }

    @Override
    public Optional<String> sessionEnd(SessionEnd it) {
        return say(EventPhrase.ENDED, it.readings(), EndWords.of(it.reason()));
    }

    @Override
    public Optional<String> other(SessionRecord it) {
        return Optional.empty();
    }

    private Optional<String> told(SessionRecord it) {
        return Optional.of(sentences.of(it));
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
    public Optional<String> caution(Caution it) {
        return it.match(signals);
    }

    @Override
    public Optional<String> said(Said it) {
        return it.match(persons);
    }

    @Override
    public Optional<String> sound(Sound it) {
        return told(it);
    }

    @Override
    public Optional<String> link(Link it) {
        return it instanceof Link.Changed changed ? changed(changed) : told(it);
    }

    private static Optional<String> changed(Link.Changed it) {
        String what = switch (it.state()) {
            case LOST -> EventPhrase.LOST.of();
            case STALE -> EventPhrase.STALE.of();
            case RESUMED -> EventPhrase.RESUMED.of();
        };
        String detail = DetailWords.of(it.detail());
        return Optional.of(detail.isEmpty() ? what : what + ": " + detail);
    }

    @Override
    public Optional<String> request(Request it) {
        if (it instanceof Request.SetGenerator point && !point.byHand()) {
            return Optional.empty();
        }
        return told(it).map(said -> it.manner() == Manner.ASKS ? asked(it, said) : said);
    }

    /** A move of a check and a set-up say what they are, being read among other lines. */
    private static String asked(Request it, String said) {
        if (it instanceof Request.Asked) {
            return EventPhrase.PLEASE.of(said);
        }
        return it instanceof Request.SetUp setUp && setUp.what().setup().isPresent()
                ? EventPhrase.SET_UP.of(said)
                : said;
    }

    @Override
    public Optional<String> guard(Guard it) {
        return told(it);
    }

    @Override
    public Optional<String> curveWork(CurveWork it) {
        return it instanceof CurveWork.PointTaken point
                ? say(
                        EventPhrase.POINT_READS,
                        Frequencies.kHz(point.hz()),
                        Figures.of(point.level(), point.level(), unit))
                : told(it);
    }

    @Override
    public Optional<String> sheetWork(SheetWork it) {
        return told(it);
    }

    @Override
    public Optional<String> work(Work it) {
        return it instanceof Adjuster adjuster ? adjuster(adjuster) : told(it);
    }

    private static Optional<String> adjuster(Adjuster it) {
        return switch (it.action()) {
            case BEGIN -> say(EventPhrase.NOW, it.name());
            case DONE -> say(EventPhrase.DONE, it.name(), gain(it.gainDb()));
            case SKIP -> say(EventPhrase.LEFT_AS_IT_IS, it.name());
        };
    }

    private static String gain(double gainDb) {
        return Double.isNaN(gainDb) ? "" : EventPhrase.GAIN.of(Rounded.to(gainDb, 1));
    }

    /** Said only where it is another thing than before. */
    private Optional<String> sought(Seek newSeek) {
        Seek before = seek;
        seek = newSeek;
        return newSeek == before
                ? Optional.empty()
                : say(EventPhrase.SOUGHT, CodeWords.of(newSeek.code()), words().nearer());
    }

    private static Optional<String> say(EventPhrase phrase, Object... gaps) {
        return Optional.of(phrase.of(gaps));
    }

    /** What is to be known of the signal. */
    private final class Signals implements Caution.Matcher<Optional<String>> {

        @Override
        public Optional<String> overload(Overload it) {
            return say(EventPhrase.OVERLOAD, CodeWords.of(it.cause().code()), sentences.of(it));
        }

        @Override
        public Optional<String> overloadCleared(OverloadCleared it) {
            return say(EventPhrase.OVERLOAD_GONE);
        }

        @Override
        public Optional<String> weak(Weak it) {
            return say(EventPhrase.WEAK, it.snrDb(), sentences.of(it));
        }

        @Override
        public Optional<String> drift(Drift it) {
            return say(EventPhrase.DRIFTING, it.perMinute(), it.unit());
        }

        @Override
        public Optional<String> settled(Caution.Settled it) {
            return told(it);
        }

        @Override
        public Optional<String> suspected(Caution.Suspected it) {
            return told(it);
        }

        @Override
        public Optional<String> noLongerSuspected(Caution.NoLongerSuspected it) {
            return told(it);
        }

        @Override
        public Optional<String> widePeak(Caution.WidePeak it) {
            return told(it);
        }

        @Override
        public Optional<String> restMissing(Caution.RestMissing it) {
            return told(it);
        }

        @Override
        public Optional<String> slowReadings(Caution.SlowReadings it) {
            return told(it);
        }

        @Override
        public Optional<String> windowMissed(Caution.WindowMissed it) {
            return told(it);
        }

        @Override
        public Optional<String> checked(Caution.Checked it) {
            return told(it);
        }
    }

    /** What the person says. */
    private final class Persons implements Said.Matcher<Optional<String>>, Instruction.Matcher<Optional<String>> {

        @Override
        public Optional<String> note(Said.Note it) {
            return Optional.of(it.text().isEmpty() ? EventPhrase.MARK.of() : it.text());
        }

        @Override
        public Optional<String> command(Said.Command it) {
            return it.instruction().match(this);
        }

        @Override
        public Optional<String> answer(Said.Answer it) {
            return Optional.of(it.text());
        }

        @Override
        public Optional<String> counted(Said.Counted it) {
            return told(it);
        }

        @Override
        public Optional<String> level(Instruction.Level it) {
            LevelCommand command = it.command();
            return Optional.of(
                    switch (command.verb()) {
                        case POINT -> EventPhrase.METER_AT.of(CodeWords.of(command.detail()));
                        case CHECK -> EventPhrase.CHECK_OF.of(CodeWords.of(command.detail()));
                        case DONE -> EventPhrase.ALL_DONE.of();
                        case CANCEL -> EventPhrase.CHECK_DROPPED.of();
                        case REPAIRED -> EventPhrase.LOOKED_AFTER.of();
                        case CUT -> EventPhrase.CHANGE_GENERATOR.of(command.number());
                        case AWAY -> EventPhrase.GENERATOR_AWAY.of();
                        case TURNING -> EventPhrase.GENERATOR_TURNING.of();
                        case TURNED -> EventPhrase.GENERATOR_TURNED.of(Decibels.of(command.number()));
                        case SKIRTS_AT -> EventPhrase.SKIRTS_AT.of(command.detail());
                        case WINDOW ->
                            Double.isInfinite(Double.parseDouble(command.detail()))
                                    ? EventPhrase.NO_WINDOW.of()
                                    : EventPhrase.WINDOW.of(command.detail());
                        case IMAGE_AT -> EventPhrase.IMAGE_AT.of(command.detail());
                    });
        }

        @Override
        public Optional<String> find(Instruction.Find it) {
            return sought(it.seek());
        }

        @Override
        public Optional<String> takeBack(Instruction.TakeBack it) {
            return say(EventPhrase.TAKEN_BACK);
        }
    }
}
