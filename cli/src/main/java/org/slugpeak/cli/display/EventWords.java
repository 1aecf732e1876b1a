package org.slugpeak.cli.display;

import java.util.Locale;
import java.util.Optional;
import org.slugpeak.cli.words.RecordSentences;
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
        return say(
                "%s from %s, looking for a %s%s",
                it.measurand().quantity(), it.source(), seek.code(), words().nearer());
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
        return lossDb >= 0.005 ? ", " + Figures.decibels(lossDb) + " short" : "";
    }

    @Override
    public Optional<String> held(Held it) {
        return Optional.of("held: recorded at " + Figures.of(it.value(), it.value(), unit) + lost(it.lossDb()));
    }

    @Override
    public Optional<String> twoPeaks(TwoPeaks it) {
        String higher = Math.abs(it.first()) >= Math.abs(it.second()) ? "the first" : "the second";
        return Optional.of("two peaks, dip of " + Figures.decibels(it.dipDb()) + " between: " + higher + " is higher");
    }

    @Override
    public Optional<String> noPeak(NoPeak it) {
        return Optional.of(noPeak(it.reason(), seek.code()));
    }

    private static String noPeak(NoPeakReason reason, String sought) {
        return switch (reason) {
            case FLAT -> "no " + sought + ": the reading does not move";
            case END_OF_TRAVEL -> "no " + sought + ": end of the travel";
            case REVERSED -> "no " + sought + " yet: the reading goes on, keep turning";
            case DEAD_ZERO -> "false zero: the sign does not change";
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
        return say("end, %d readings: %s", it.readings(), it.reason());
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
            case LOST -> "LINK LOST";
            case STALE -> "NO NEW READINGS";
            case RESUMED -> "readings again";
        };
        return Optional.of(it.detail().isEmpty() ? what : what + ": " + it.detail());
    }

    @Override
    public Optional<String> request(Request it) {
        return told(it).map(said -> it.manner() == Manner.ASKS ? asked(it, said) : said);
    }

    /** A move of a check and a set-up say what they are, being read among other lines. */
    private static String asked(Request it, String said) {
        if (it instanceof Request.Asked) {
            return "please: " + said;
        }
        return it instanceof Request.SetUp setUp && setUp.what().setup().isPresent() ? "set up: " + said : said;
    }

    @Override
    public Optional<String> guard(Guard it) {
        return told(it);
    }

    @Override
    public Optional<String> curveWork(CurveWork it) {
        return told(it);
    }

    @Override
    public Optional<String> work(Work it) {
        return it instanceof Adjuster adjuster ? adjuster(adjuster) : told(it);
    }

    private static Optional<String> adjuster(Adjuster it) {
        return switch (it.action()) {
            case BEGIN -> Optional.of("now: " + it.name());
            case DONE -> Optional.of(it.name() + " done" + gain(it.gainDb()));
            case SKIP -> Optional.of(it.name() + " left as it is");
        };
    }

    private static String gain(double gainDb) {
        return Double.isNaN(gainDb) ? "" : String.format(Locale.ROOT, ", %+.1f dB", Rounded.to(gainDb, 1));
    }

    /** Said only where it is another thing than before. */
    private Optional<String> sought(Seek newSeek) {
        Seek before = seek;
        seek = newSeek;
        return newSeek == before ? Optional.empty() : say("looking for a %s%s", newSeek.code(), words().nearer());
    }

    private static Optional<String> say(String format, Object... arguments) {
        return Optional.of(String.format(Locale.ROOT, format, arguments));
    }

    /** What is to be known of the signal. */
    private final class Signals implements Caution.Matcher<Optional<String>> {

        @Override
        public Optional<String> overload(Overload it) {
            return say("OVERLOAD, %s: %s", it.cause().code(), sentences.of(it));
        }

        @Override
        public Optional<String> overloadCleared(OverloadCleared it) {
            return Optional.of("overload gone");
        }

        @Override
        public Optional<String> weak(Weak it) {
            return say("weak, %.0f dB over the noise: %s", it.snrDb(), sentences.of(it));
        }

        @Override
        public Optional<String> drift(Drift it) {
            return say("drifting %+.3g %s a minute, nothing is turned", it.perMinute(), it.unit());
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
        public Optional<String> checked(Caution.Checked it) {
            return told(it);
        }
    }

    /** What the person says. */
    private final class Persons implements Said.Matcher<Optional<String>>, Instruction.Matcher<Optional<String>> {

        @Override
        public Optional<String> note(Said.Note it) {
            return Optional.of(it.text().isEmpty() ? "mark" : it.text());
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
        public Optional<String> level(Instruction.Level it) {
            LevelCommand command = it.command();
            return Optional.of(
                    switch (command.verb()) {
                        case POINT -> "meter at " + command.detail();
                        case CHECK -> "check of " + command.detail() + ": hands off for a moment";
                        case DONE -> "done";
                        case CANCEL -> "the check is dropped";
                        case REPAIRED -> "looked after: other faults may be suspected again";
                        case CUT -> "now change the generator to " + command.detail() + " times";
                    });
        }

        @Override
        public Optional<String> find(Instruction.Find it) {
            return sought(it.seek());
        }

        @Override
        public Optional<String> takeBack(Instruction.TakeBack it) {
            return Optional.of("the last value is taken back");
        }
    }
}
