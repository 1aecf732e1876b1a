package org.slugpeak.cli.display;

import java.util.Optional;
import org.slugpeak.cli.words.RecordSentences;
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
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.session.Work;

/** Keeps the scene up to date. One thread feeds it; any thread may look at the scene. */
final class SceneKeeper implements RecordSink {

    private static final long NOTE_LASTS_NANOS = 8_000_000_000L;

    private volatile Scene scene = Scene.empty();
    private final EventWords words = new EventWords();
    private final Changes changes = new Changes();

    @Override
    public void take(SessionRecord record) {
        Optional<String> said = record.matchFamily(words);
        scene = record.matchFamily(changes).change(scene, said.orElse(""));
    }

    Scene scene() {
        return scene;
    }

    /** What a record makes of the scene before it, given how the event is said. */
    @FunctionalInterface
    private interface Change {
        Scene change(Scene before, String said);
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
            return it.back().isPresent() ? stepsBack() : verdict(Verdict.Call.BACK);
        }

        @Override
        public Change returned(Returned it) {
            return verdict(Verdict.Call.STOP);
        }

        @Override
        public Change held(Held it) {
            return verdict(Verdict.Call.HELD);
        }

        @Override
        public Change twoPeaks(TwoPeaks it) {
            return verdict(Verdict.Call.TWO_PEAKS);
        }

        @Override
        public Change noPeak(NoPeak it) {
            return verdict(Verdict.Call.NO_PEAK);
        }

        private static Change stepsBack() {
            return (before, said) -> before.withVerdict(Verdict.stepsBack(said));
        }

        private static Change verdict(Verdict.Call call) {
            return (before, said) -> before.withVerdict(new Verdict(call, said));
        }

        @Override
        public Change hinted(Finding.Hinted it) {
            return switch (it.hint()) {
                case WRONG_WAY -> unlessBack(it, Verdict.Call.OTHER_WAY);
                case STOPPED_SHORT -> unlessBack(it, Verdict.Call.TURN);
                case NEGATIVE_GOING, BEST_AGED, SIGNAL_GONE, SIGNAL_BACK, TURN_SLOWER -> noted(it);
            };
        }

        @Override
        public Change furtherPast(Finding.FurtherPast it) {
            return noted(it);
        }

        /** Whoever is told to turn back goes on being told so, with the decibels, until the level is back; the rest is a note. */
        private static Change unlessBack(Finding it, Verdict.Call call) {
            return (before, said) -> before.verdict().call() == Verdict.Call.BACK
                    ? note(before, it.tNanos(), said)
                    : before.withVerdict(new Verdict(call, said));
        }

        private static Change noted(SessionRecord it) {
            return (before, said) -> note(before, it.tNanos(), said);
        }

        @Override
        public Change request(Request it) {
            return switch (it.manner()) {
                case ASKS -> (before, said) -> before.withToDo(Optional.of(ToDo.of(it, sentences.of(it))));
                case ANSWERS -> (before, said) -> note(before.withToDo(Optional.empty()), it.tNanos(), said);
                case VERDICT, ALARM, NOTES -> noted(it);
            };
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
        public Change work(Work it) {
            return it instanceof Adjuster adjuster ? adjuster(adjuster) : noted(it);
        }

        private static Change adjuster(Adjuster it) {
            boolean begins = it.action() == Adjuster.Action.BEGIN;
            return (before, said) -> {
                Scene asked = before.withToDo(Optional.empty())
                        .withWarning(before.warning().filter(warning -> !warning.isOfOnePeak()));
                return note(begins ? asked.withAdjuster(it.name()) : asked, it.tNanos(), said);
            };
        }

        @Override
        public Change readingTaken(ReadingTaken it) {
            return (before, said) -> {
                Level level = Level.of(it, before.seek(), before.level().swing());
                Optional<ToDo> standing = before.toDo().filter(toDo -> toDo.stands(it.tNanos(), it.trend()));
                return faded(turning(before.withLevel(level).withToDo(standing)), it.tNanos());
            };
        }

        /** A better reading than ever overtakes a verdict that was given before it; whoever turned round goes the right way. */
        private static Scene turning(Scene scene) {
            Level level = scene.level();
            boolean better = level.hasBest() && !(level.distanceDb() > 0) && level.isNearing(scene.seek());
            boolean first = scene.verdict().call() == Verdict.Call.WAIT && level.hasBest();
            boolean over = better && scene.verdict().call().isOverAtNewBest();
            boolean turned = scene.verdict().call() == Verdict.Call.OTHER_WAY && level.isNearing(scene.seek());
            return first || over || turned ? scene.withVerdict(Verdict.turn(scene.seek())) : scene;
        }

        private static Scene faded(Scene scene, long nowNanos) {
            boolean old = scene.note()
                    .map(note -> nowNanos - note.tNanos() > NOTE_LASTS_NANOS)
                    .orElse(false);
            return old ? scene.withNote(Optional.empty()) : scene;
        }

        private static Scene note(Scene before, long tNanos, String said) {
            return said.isEmpty() ? before : before.withNote(Optional.of(new Scene.Note(tNanos, said)));
        }

        @Override
        public Change sessionEnd(SessionEnd it) {
            return (before, said) -> before.withToDo(Optional.empty()).withVerdict(new Verdict(Verdict.Call.END, said));
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
            public Change command(Said.Command it) {
                Change change = it.instruction().match(this);
                return (before, said) -> Changes.note(change.change(before, said), it.tNanos(), said);
            }

            @Override
            public Change level(Instruction.Level it) {
                return switch (it.command().verb()) {
                    case REPAIRED -> (before, said) -> before.withWarning(Optional.empty());
                    case CANCEL -> (before, said) -> before.withToDo(Optional.empty());
                    case POINT, CHECK, DONE, CUT, SKIRTS_AT, IMAGE_AT, WINDOW -> (before, said) -> before;
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
