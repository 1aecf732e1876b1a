package org.slugpeak.cli.align;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.cli.words.SafeHands;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.progress.Order;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.GainSums;
import org.slugpeak.core.session.Gains;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/**
 * Carries out the orders of an {@link AlignmentProgress} in a session. An adjuster whose plan wants a proof is not ended before that
 * check is over; the orders that follow wait as long. One thread: the session's.
 */
public final class PlanGuide implements Guide {

    private final Plan plan;
    private final List<String> safety;
    private final AlignmentProgress progress;
    private final Consumer<Setup> feed;
    private final StepWishes wishes = new StepWishes();
    private List<String> notes = List.of();
    private Optional<Order.End> proving = Optional.empty();
    private boolean proved;
    private final GainSums sums = new GainSums(Seek.PEAK);

    /**
     * A guide at the place where the progress stands.
     *
     * @param plan that is carried out
     * @param safety safety questions with their answers, for the record
     * @param progress where the work is
     * @param feed sets the generator as a step wants it, where that is ordered
     */
    public PlanGuide(Plan plan, List<String> safety, AlignmentProgress progress, Consumer<Setup> feed) {
        this.feed = feed;
        this.plan = plan;
        this.safety = List.copyOf(safety);
        this.progress = progress;
    }

    /**
     * Notes something at the beginning, so that it stands in the log.
     *
     * @param texts in order
     * @return this
     */
    public PlanGuide noting(List<String> texts) {
        notes = List.copyOf(texts);
        return this;
    }

    @Override
    public void begin(Analysis analysis) {
        analysis.tell(at -> new Work.PlanBegun(at, plan.name()));
        notes.forEach(analysis::note);
        safety.forEach(answer -> analysis.tell(at -> new Said.Answer(at, answer)));
        analysis.tell(at -> new Said.Answer(at, AskPhrase.TOLD.of(SafeHands.turning())));
        command(analysis, wishesHere());
    }

    @Override
    public void take(SessionRecord record) {
        progress.take(record);
        proved = proved || (proving.isPresent() && endsCheck(record));
        sums.take(record);
    }

    /**
     * What came of it, for whoever has watched nothing.
     *
     * @param log where the session was kept
     * @return one line
     */
    public String outcome(Optional<Path> log) {
        String done = gained();
        String kept = log.map(file -> AskPhrase.RECORD_IN.of(file)).orElseGet(AskPhrase.NO_RECORD::of);
        String goOn = log.map(file -> AskPhrase.RESUME.of(file)).orElse(kept);
        Stage stage = stageHere();
        PlanStep step = stage.steps().get(progress.position().step());
        return progress.isOver()
                ? AskPhrase.THROUGH.of(done, kept)
                : AskPhrase.ENDED_BEFORE.of(step.adjuster(), stage.name(), done, goOn);
    }

    private String gained() {
        Gains gains = sums.gains();
        List<String> parts = new ArrayList<>(List.of(AskPhrase.ADJUSTMENTS.of(gains.adjustments())));
        gains.sums().forEach(sum -> parts.add(AskPhrase.SUM.of(sum.path(), Rounded.to(sum.gainDb(), 1))));
        gains.zeros().forEach(zero -> parts.add(AskPhrase.ZERO_LEFT.of(zero.adjuster(), Rounded.to(zero.level(), 3))));
        return String.join("; ", parts);
    }

    @Override
    public void lead(Analysis analysis, SessionControl control) {
        Obeying obeying = new Obeying(analysis, control);
        if (proved) {
            endProved(analysis);
        }
        for (Optional<Order> order = progress.nextOrder(); order.isPresent(); order = progress.nextOrder()) {
            order.get().match(obeying);
        }
    }

    /** A check that is dropped by key says nothing when it ends. */
    private static boolean endsCheck(SessionRecord record) {
        return record instanceof Request.CheckOver
                || (record instanceof Said.Command it
                        && it.instruction().equals(new Instruction.Level(LevelCommand.cancel())));
    }

    private void endProved(Analysis analysis) {
        proved = false;
        Optional<Order.End> end = proving;
        proving = Optional.empty();
        end.ifPresent(it -> analysis.adjusterEnded(it.action(), it.gainDb()));
    }

    private List<LevelCommand> wishesHere() {
        Stage stage = stageHere();
        return wishes.before(stage, stage.steps().get(progress.position().step()));
    }

    private Stage stageHere() {
        return plan.stages().get(progress.position().stage());
    }

    private static void command(Analysis analysis, List<LevelCommand> commands) {
        commands.forEach(each -> analysis.command(new Instruction.Level(each)));
    }

    @Override
    public void next(Analysis analysis) {
        if (proving.isPresent()) {
            command(analysis, List.of(LevelCommand.done()));
            return;
        }
        progress.next();
    }

    @Override
    public void counted(Analysis analysis, double hz) {
        Setup setup = stageHere().steps().get(progress.position().step()).setup();
        if (setup.plannedHz().isPresent()) {
            double wantedHz = setup.plannedHz().getAsDouble();
            analysis.tell(at -> new Said.Counted(at, hz, wantedHz, false));
        } else {
            analysis.note(AskPhrase.COUNTER_READS.of(hz / 1e3));
        }
    }

    @Override
    public void back(Analysis analysis) {
        progress.back();
    }

    @Override
    public void skip(Analysis analysis) {
        if (proving.isPresent()) {
            command(analysis, List.of(LevelCommand.cancel()));
            return;
        }
        progress.skip();
    }

    /** What each order does to the session. */
    private final class Obeying implements Order.Matcher {

        private final Analysis analysis;
        private final SessionControl control;

        Obeying(Analysis analysis, SessionControl control) {
            this.analysis = analysis;
            this.control = control;
        }

        @Override
        public void begin(Order.Begin it) {
            command(analysis, wishesHere());
            analysis.command(new Instruction.Find(it.seek()));
            analysis.nextAdjuster(it.adjuster());
        }

        @Override
        public void end(Order.End it) {
            List<LevelCommand> proofs = it.action() == Adjuster.Action.DONE ? wishes.proofs() : List.of();
            if (proofs.isEmpty()) {
                analysis.adjusterEnded(it.action(), it.gainDb());
            } else {
                proving = Optional.of(it);
                command(analysis, proofs);
            }
        }

        @Override
        public void say(Order.Say it) {
            analysis.tell(it.what());
        }

        @Override
        public void level(Order.Level it) {
            command(analysis, wishes.forCheck(it.command()));
        }

        @Override
        public void feed(Order.Feed it) {
            feed.accept(it.setup());
        }

        @Override
        public void finish(Order.Finish it) {
            control.quit(EndReason.Known.PLAN_THROUGH);
        }
    }
}
