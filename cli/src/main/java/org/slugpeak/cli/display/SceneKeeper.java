package org.slugpeak.cli.display;

import java.util.Optional;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.Mark;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.SeekCommand;
import org.slugpeak.core.session.SessionEnd;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;
import org.slugpeak.core.session.StepCommand;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;

/** Keeps the scene up to date. One thread feeds it; any thread may look at the scene. */
final class SceneKeeper implements RecordSink {

    private static final long NOTE_LASTS_NANOS = 8_000_000_000L;

    private volatile Scene scene = Scene.EMPTY;
    private final EventWords words = new EventWords();
    private final Changes changes = new Changes();

    @Override
    public void take(SessionRecord record) {
        Optional<String> said = record.match(words);
        scene = record.match(changes).change(scene, said.orElse(""));
    }

    Scene scene() {
        return scene;
    }

    /** What a record makes of the scene before it, given how the event is said. */
    @FunctionalInterface
    private interface Change {
        Scene change(Scene before, String said);
    }

    private static final class Changes implements SessionRecord.Matcher<Change> {

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
        public Change mark(Mark it) {
            if (StepCommand.isUndo(it.text())) {
                return (before, said) -> note(before.withVerdict(Verdict.turn(before.seek())), it.tNanos(), said);
            }
            Optional<Seek> sought = SeekCommand.parse(it.text());
            Optional<LevelCommand> command = LevelCommand.parse(it.text());
            boolean drops = command.map(LevelCommand::verb).equals(Optional.of(LevelCommand.Verb.CANCEL));
            return (before, said) -> {
                Optional<Warning> warning = command.map(given -> Warning.after(before.warning(), given))
                        .orElse(before.warning());
                Scene seeking = before.withSeek(sought.orElse(before.seek())).withWarning(warning);
                return note(drops ? seeking.withRequest(Optional.empty()) : seeking, it.tNanos(), said);
            };
        }

        @Override
        public Change advice(Advice it) {
            if (it.topic().equals(Hint.WRONG_WAY.code())) {
                return unlessBack(it, Verdict.Call.OTHER_WAY);
            }
            if (it.topic().equals(Hint.STOPPED_SHORT.code())) {
                return unlessBack(it, Verdict.Call.TURN);
            }
            return (before, said) -> {
                Scene asked = before.withRequest(Request.after(before.request(), it));
                Optional<Warning> warning = Warning.after(before.warning(), it);
                boolean stands = warning.map(Warning::topic).equals(Optional.of(it.topic()));
                return Request.isAsked(it) || stands
                        ? asked.withWarning(warning)
                        : note(asked.withWarning(warning), it.tNanos(), said);
            };
        }

        /** Whoever is told to turn back goes on being told so, with the decibels, until the level is back; the rest is a note. */
        private static Change unlessBack(Advice it, Verdict.Call call) {
            return (before, said) -> before.verdict().call() == Verdict.Call.BACK
                    ? note(before, it.tNanos(), said)
                    : before.withVerdict(new Verdict(call, said));
        }

        private static Change noted(SessionRecord it) {
            return (before, said) -> note(before, it.tNanos(), said);
        }

        @Override
        public Change link(Link it) {
            if (it.state() == Link.State.RESUMED) {
                return (before, said) -> note(before.withLink(Optional.empty()), it.tNanos(), said);
            }
            return (before, said) -> before.withLink(Optional.of(said));
        }

        @Override
        public Change adjuster(Adjuster it) {
            boolean begins = it.action() == Adjuster.Action.BEGIN;
            return (before, said) -> {
                Scene asked = before.withRequest(Optional.empty())
                        .withWarning(before.warning().filter(warning -> !warning.isOfOnePeak()));
                return note(begins ? asked.withAdjuster(it.name()) : asked, it.tNanos(), said);
            };
        }

        @Override
        public Change readingTaken(ReadingTaken it) {
            return (before, said) -> {
                Level level = Level.of(it, before.seek(), before.level().swing());
                Optional<Request> standing =
                        before.request().filter(request -> request.stands(it.tNanos(), it.trend()));
                return faded(turning(before.withLevel(level).withRequest(standing)), it.tNanos());
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
            return (before, said) ->
                    before.withRequest(Optional.empty()).withVerdict(new Verdict(Verdict.Call.END, said));
        }
    }
}
