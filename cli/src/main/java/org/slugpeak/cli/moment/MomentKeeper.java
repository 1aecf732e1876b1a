package org.slugpeak.cli.moment;

import java.util.Optional;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.peak.Seek;
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
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
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

/** Keeps the moment up to date. One thread feeds it; any thread may look at the moment. */
public final class MomentKeeper implements RecordSink {

    private static final long NOTE_LASTS_NANOS = 8_000_000_000L;

    private volatile Moment moment = Moment.empty();
    private final EventWords words = new EventWords();
    private final Changes changes = new Changes();
    private final Calling calling = new Calling();
    private Optional<String> said = Optional.empty();

    /** Before the session. */
    public MomentKeeper() {}

    @Override
    public void take(SessionRecord record) {
        said = record.matchFamily(words).filter(it -> !it.isEmpty());
        Moment after = record.matchFamily(changes).change(moment, said.orElse(""));
        moment = calling.of(record, moment, after)
                .map(call -> after.withCall(record.tNanos(), call))
                .orElse(after);
    }

    /**
     * As it is now.
     *
     * @return after the last record
     */
    public Moment moment() {
        return moment;
    }

    /**
     * What the last record says, for whoever tells one thing after the other. To be called in the thread that feeds this.
     *
     * @return one short sentence; empty for a plain reading
     */
    public Optional<String> said() {
        return said;
    }

    /** What a record makes of the moment before it, given how the event is said. */
    @FunctionalInterface
    private interface Change {
        Moment change(Moment before, String said);
    }

    private static final class Changes implements Families<Change>, Frame.Matcher<Change>, Finding.Matcher<Change> {

        private final RecordSentences sentences = new RecordSentences();
        private final Cautions cautions = new Cautions();
        private final Persons persons = new Persons();

        @Override
        public Change other(SessionRecord it) {
            return (before, said) -> before;
        }

        @Override
        public Change frame(Frame it) {
            return it.match(this);
        }

        @Override
        public Change finding(Finding it) {
            return it.match(this);
        }

        @Override
        public Change caution(Caution it) {
            return it.match(cautions);
        }

        @Override
        public Change said(Said it) {
            return it.match(persons);
        }

        @Override
        public Change sound(Sound it) {
            return noted(it);
        }

        @Override
        public Change sessionStart(SessionStart it) {
            Seek seek = it.settings().seek();
            return (before, said) ->
                    note(before.withSession(it.source(), it.measurand().unit(), seek), it.tNanos(), said);
        }

        @Override
        public Change passed(Passed it) {
            return it.back().isPresent() ? stepsBack(it) : verdict(it, Act.BACK);
        }

        @Override
        public Change returned(Returned it) {
            return verdict(it, Act.STOP);
        }

        @Override
        public Change held(Held it) {
            return verdict(it, Act.HELD);
        }

        @Override
        public Change twoPeaks(TwoPeaks it) {
            return verdict(it, Act.TWO_PEAKS);
        }

        @Override
        public Change noPeak(NoPeak it) {
            return verdict(it, Act.NO_PEAK);
        }

        private static Change stepsBack(Passed it) {
            return (before, said) -> decided(before, it.tNanos(), Verdict.stepsBack(said));
        }

        private static Change verdict(Finding it, Act act) {
            return (before, said) -> decided(before, it.tNanos(), new Verdict(act, said));
        }

        /** What was asked for a while only becomes a remark: the hand has something more urgent to do. */
        private static Moment decided(Moment before, long tNanos, Verdict verdict) {
            Optional<ToDo> outlasting = before.toDo().filter(ToDo::outlastsVerdicts);
            Moment now = before.withVerdict(verdict).withToDo(outlasting);
            boolean dropped = outlasting.isEmpty() && before.act() == Act.DO;
            return dropped ? note(now, tNanos, before.toDo().map(ToDo::text).orElse("")) : now;
        }

        @Override
        public Change hinted(Finding.Hinted it) {
            return switch (it.hint()) {
                case WRONG_WAY -> unlessBack(it, Act.OTHER_WAY);
                case STOPPED_SHORT -> unlessBack(it, Act.TURN);
                case NEGATIVE_GOING, BEST_AGED, SIGNAL_GONE, SIGNAL_BACK, TURN_SLOWER -> noted(it);
            };
        }

        @Override
        public Change furtherPast(Finding.FurtherPast it) {
            return noted(it);
        }

        /** Whoever is told to turn back goes on being told so, with the decibels, until the level is back; the rest is a note. */
        private static Change unlessBack(Finding it, Act act) {
            return (before, said) -> before.verdict().act() == Act.BACK
                    ? note(before, it.tNanos(), said)
                    : decided(before, it.tNanos(), new Verdict(act, said));
        }

        private static Change noted(SessionRecord it) {
            return (before, said) -> note(before, it.tNanos(), said);
        }

        @Override
        public Change request(Request it) {
            if (it instanceof Request.SetGenerator point) {
                return (before, said) -> point(before, point);
            }
            if (it instanceof Request.GeneratorStands) {
                return (before, said) ->
                        note(before.withToDo(before.toDo().filter(ToDo::outlastsGenerator)), it.tNanos(), said);
            }
            return switch (it.manner()) {
                case ASKS -> (before, said) -> before.withToDo(Optional.of(ToDo.of(it, sentences.of(it))));
                case ANSWERS -> (before, said) -> note(before.withToDo(Optional.empty()), it.tNanos(), said);
                case VERDICT, ALARM, NOTES -> noted(it);
            };
        }

        /** Of a curve, in which no adjuster is turned. */
        private static Moment point(Moment before, Request.SetGenerator it) {
            return before.withAdjuster(ScreenPhrase.POINT_OF.of(it.number(), it.points()))
                    .withVerdict(Verdict.waiting())
                    .withToDo(Optional.of(ToDo.ofPoint(it)));
        }

        @Override
        public Change link(Link it) {
            return it instanceof Link.Changed changed ? changed(changed) : noted(it);
        }

        private static Change changed(Link.Changed it) {
            if (it.state() == Link.State.RESUMED) {
                return (before, said) -> note(before.withLink(Optional.empty()), it.tNanos(), said);
            }
            return (before, said) -> before.withLink(Optional.of(said));
        }

        @Override
        public Change guard(Guard it) {
            return noted(it);
        }

        @Override
        public Change curveWork(CurveWork it) {
            return noted(it);
        }

        @Override
        public Change sheetWork(SheetWork it) {
            return it instanceof SheetWork.OutputTaken
                    ? (before, said) -> note(before.withToDo(Optional.empty()), it.tNanos(), said)
                    : noted(it);
        }

        @Override
        public Change work(Work it) {
            return it instanceof Adjuster adjuster ? adjuster(adjuster) : noted(it);
        }

        private static Change adjuster(Adjuster it) {
            boolean begins = it.action() == Adjuster.Action.BEGIN;
            return (before, said) -> {
                Moment asked = before.withToDo(Optional.empty())
                        .withWarning(before.warning().filter(warning -> !warning.isOfOnePeak()));
                return note(begins ? asked.withAdjuster(it.name()) : asked, it.tNanos(), said);
            };
        }

        @Override
        public Change readingTaken(ReadingTaken it) {
            return (before, said) -> {
                Optional<ToDo> standing = before.toDo().filter(toDo -> toDo.stands(it.tNanos(), it.trend()));
                Level smoothed = Level.of(it, before.seek(), before.level().swing());
                Level level = standing.isPresent() ? smoothed.unsmoothed(it.reading()) : smoothed;
                return faded(turning(before.withLevel(level).withToDo(standing)), it.tNanos());
            };
        }

        /** A better reading than ever overtakes a verdict that was given before it; whoever turned round goes the right way. */
        private static Moment turning(Moment moment) {
            Level level = moment.level();
            boolean better = level.hasBest() && !(level.distanceDb() > 0) && level.isNearing(moment.seek());
            boolean first = moment.verdict().act() == Act.WAIT && level.hasBest();
            boolean over = better && moment.verdict().act().isOverAtNewBest();
            boolean turned = moment.verdict().act() == Act.OTHER_WAY && level.isNearing(moment.seek());
            return first || over || turned ? moment.withVerdict(Verdict.turn(moment.seek())) : moment;
        }

        private static Moment faded(Moment moment, long nowNanos) {
            boolean old = moment.note()
                    .map(note -> nowNanos - note.tNanos() > NOTE_LASTS_NANOS)
                    .orElse(false);
            return old ? moment.withNote(Optional.empty()) : moment;
        }

        private static Moment note(Moment before, long tNanos, String said) {
            return said.isEmpty() ? before : before.withNote(Optional.of(new Moment.Note(tNanos, said)));
        }

        @Override
        public Change sessionEnd(SessionEnd it) {
            return (before, said) -> before.withToDo(Optional.empty()).withVerdict(new Verdict(Act.END, said));
        }

        /** What each caution changes: some stand until they are answered. */
        private static final class Cautions implements Caution.Matcher<Change> {

            @Override
            public Change overload(Overload it) {
                return (before, said) -> before.withOverload(Optional.of(said));
            }

            @Override
            public Change overloadCleared(OverloadCleared it) {
                return (before, said) -> note(before.withOverload(Optional.empty()), it.tNanos(), said);
            }

            @Override
            public Change weak(Weak it) {
                return noted(it);
            }

            @Override
            public Change drift(Drift it) {
                return noted(it);
            }

            @Override
            public Change settled(Caution.Settled it) {
                return noted(it);
            }

            @Override
            public Change suspected(Caution.Suspected it) {
                return (before, said) -> before.withWarning(Optional.of(new Warning(said, false)));
            }

            @Override
            public Change noLongerSuspected(Caution.NoLongerSuspected it) {
                return (before, said) -> note(before.withWarning(Optional.empty()), it.tNanos(), said);
            }

            @Override
            public Change widePeak(Caution.WidePeak it) {
                return (before, said) -> before.withWarning(Optional.of(new Warning(said, true)));
            }

            @Override
            public Change restMissing(Caution.RestMissing it) {
                return noted(it);
            }

            @Override
            public Change slowReadings(Caution.SlowReadings it) {
                return noted(it);
            }

            @Override
            public Change windowMissed(Caution.WindowMissed it) {
                return (before, said) -> before.withWarning(Optional.of(new Warning(said, true)));
            }

            @Override
            public Change checked(Caution.Checked it) {
                if (it.check() != CheckKind.LEVEL) {
                    return noted(it);
                }
                return (before, said) -> {
                    Optional<Warning> left = before.warning().filter(warning -> !warning.isOfOnePeak());
                    return note(before.withWarning(left), it.tNanos(), said);
                };
            }
        }

        /** What a person changes by a word. */
        private static final class Persons implements Said.Matcher<Change>, Instruction.Matcher<Change> {

            @Override
            public Change note(Said.Note it) {
                return noted(it);
            }

            @Override
            public Change answer(Said.Answer it) {
                return noted(it);
            }

            @Override
            public Change counted(Said.Counted it) {
                return noted(it);
            }

            @Override
            public Change command(Said.Command it) {
                Change change = it.instruction().match(this);
                return (before, said) -> Changes.note(change.change(before, said), it.tNanos(), said);
            }

            @Override
            public Change level(Instruction.Level it) {
                return switch (it.command().verb()) {
                    case REPAIRED -> (before, said) -> before.withWarning(Optional.empty());
                    case CANCEL -> (before, said) -> before.withToDo(Optional.empty());
                    case POINT, CHECK, DONE, CUT, TURNING, TURNED, AWAY, SKIRTS_AT, IMAGE_AT, WINDOW ->
                        (before, said) -> before;
                };
            }

            @Override
            public Change find(Instruction.Find it) {
                return (before, said) -> before.withSeek(it.seek());
            }

            @Override
            public Change takeBack(Instruction.TakeBack it) {
                return (before, said) -> before.withVerdict(Verdict.turn(before.seek()));
            }
        }
    }
}
