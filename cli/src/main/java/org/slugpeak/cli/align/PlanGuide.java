package org.slugpeak.cli.align;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.cli.words.AskPhrase;
import org.slugpeak.cli.words.SafeHands;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.progress.Order;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/** Carries out the orders of an {@link AlignmentProgress} in a session. One thread: the session's. */
public final class PlanGuide implements Guide {

    private final String planName;
    private final List<String> safety;
    private final AlignmentProgress progress;
    private int adjustments;
    private double gainDb;

    /**
     * A guide at the place where the progress stands.
     *
     * @param planName for the record
     * @param safety safety questions with their answers, for the record
     * @param progress where the work is
     */
    public PlanGuide(String planName, List<String> safety, AlignmentProgress progress) {
        this.planName = planName;
        this.safety = List.copyOf(safety);
        this.progress = progress;
    }

    @Override
    public void begin(Analysis analysis) {
        analysis.tell(at -> new Work.PlanBegun(at, planName));
        safety.forEach(answer -> analysis.tell(at -> new Said.Answer(at, answer)));
        analysis.tell(at -> new Said.Answer(at, AskPhrase.TOLD.of(SafeHands.turning())));
    }

    @Override
    public void take(SessionRecord record) {
        progress.take(record);
        if (record instanceof Adjuster it && it.action() == Adjuster.Action.DONE) {
            adjustments++;
            gainDb += Double.isFinite(it.gainDb()) ? it.gainDb() : 0;
        }
    }

    /**
     * What came of it, for whoever has watched nothing.
     *
     * @param log where the session was kept
     * @return one line
     */
    public String outcome(Optional<Path> log) {
        String done = AskPhrase.ADJUSTMENTS.of(adjustments, Rounded.to(gainDb, 1));
        String kept = log.map(file -> AskPhrase.RECORD_IN.of(file)).orElseGet(AskPhrase.NO_RECORD::of);
        String goOn = log.map(file -> AskPhrase.RESUME.of(file)).orElse(kept);
        return progress.isOver() ? AskPhrase.THROUGH.of(done, kept) : AskPhrase.ENDED_BEFORE.of(done, goOn);
    }

    @Override
    public void lead(Analysis analysis, SessionControl control) {
        Obeying obeying = new Obeying(analysis, control);
        for (Optional<Order> order = progress.nextOrder(); order.isPresent(); order = progress.nextOrder()) {
            order.get().match(obeying);
        }
    }

    @Override
    public void next(Analysis analysis) {
        progress.next();
    }

    @Override
    public void back(Analysis analysis) {
        progress.back();
    }

    @Override
    public void skip(Analysis analysis) {
        progress.skip();
    }

    /** What each order does to the session. */
    private record Obeying(Analysis analysis, SessionControl control) implements Order.Matcher {

        @Override
        public void begin(Order.Begin it) {
            analysis.command(new Instruction.Find(it.seek()));
            analysis.nextAdjuster(it.adjuster());
        }

        @Override
        public void end(Order.End it) {
            analysis.adjusterEnded(it.action());
        }

        @Override
        public void say(Order.Say it) {
            analysis.tell(it.what());
        }

        @Override
        public void level(Order.Level it) {
            analysis.command(new Instruction.Level(it.command()));
        }

        @Override
        public void finish(Order.Finish it) {
            control.quit("plan through");
        }
    }
}
