package org.slugpeak.cli.align;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.cli.words.ShownPlan;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Position;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.progress.Order;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;
import org.slugpeak.core.word.Coded;

/**
 * Goes through a plan as a session would whose every adjuster stands at its best already, and writes down what is said on the way,
 * in the words of the session. One round of each stage is gone through, since in the others the same is said. One thread at a time.
 */
final class PlanWalk implements Order.Matcher {

    private static final long READING_NANOS = 100_000_000L;

    /** Above the least reading of every window, so that nothing is left out for want of signal. */
    private static final double READING = 1e6;

    /** What is said of a part of the plan; as far from the margin as its indent. */
    record Line(int indent, String text) {}

    private static final int STEP_INDENT = 3;

    private final Plan plan;
    private final AlignmentProgress progress;
    private final RecordSentences words = new RecordSentences();
    private final StepWishes wishes = new StepWishes();
    private final List<Line> lines = new ArrayList<>();
    private String over = "";
    private String adjuster = "";
    private int shownStage = -1;
    private long nowNanos;

    private PlanWalk(Plan plan, AlignmentProgress progress) {
        this.plan = plan;
        this.progress = progress;
    }

    /** All that is said of a plan, from its name to what it asks for in all; the progress is gone through with it. */
    static List<Line> through(Plan plan, AlignmentProgress progress) {
        PlanWalk walk = new PlanWalk(plan, progress);
        ShownPlan.head(plan).forEach(walk::atMargin);
        while (!walk.progress.isOver()) {
            walk.pass();
        }
        walk.atMargin("");
        ShownPlan.foot(plan, walk.over).forEach(walk::atMargin);
        return List.copyOf(walk.lines);
    }

    private void atMargin(String text) {
        lines.add(new Line(0, text));
    }

    /** What comes before the first stage stands at the margin. */
    private void inStage(String text) {
        lines.add(new Line(shownStage < 0 ? 0 : STEP_INDENT, text));
    }

    /** A reading; where it brings nothing more, the user says: done, go on. */
    private void pass() {
        nowNanos += READING_NANOS;
        progress.take(new ReadingTaken(Reading.of(nowNanos, READING), READING, READING, Double.NaN, 1, Trend.STEADY));
        if (!obey()) {
            progress.next();
            obey();
        }
    }

    private boolean obey() {
        boolean any = false;
        for (Optional<Order> order = progress.nextOrder(); order.isPresent(); order = progress.nextOrder()) {
            order.get().match(this);
            any = true;
        }
        return any;
    }

    private Stage stageHere() {
        return plan.stages().get(progress.position().stage());
    }

    private void stageHead() {
        int stage = progress.position().stage();
        if (stage != shownStage) {
            shownStage = stage;
            atMargin("");
            atMargin(ShownPlan.stage(stage + 1, stageHere()));
        }
    }

    @Override
    public void begin(Order.Begin it) {
        Position here = progress.position();
        PlanStep step = stageHere().steps().get(here.step());
        wishes.before(stageHere(), step);
        adjuster = it.adjuster();
    }

    @Override
    public void end(Order.End it) {
        check(wishes.proofs());
        progress.take(new Adjuster(nowNanos, adjuster, it.action(), 1, 1, 0));
    }

    @Override
    public void say(Order.Say it) {
        SessionRecord record = it.what().at(nowNanos);
        String said = words.of(record);
        if (record instanceof Request.Undamp) {
            inStage(ShownPlan.setUp(said));
        } else if (record instanceof Request.SetUp) {
            stageHead();
            inStage(ShownPlan.setUp(said));
        } else if (record instanceof Request.Turn) {
            stageHead();
            inStage(ShownPlan.step(shownStage + 1, progress.position().step() + 1, said));
        } else if (record instanceof Work.PlanOver) {
            over = said;
        }
    }

    @Override
    public void level(Order.Level it) {
        check(wishes.forCheck(it.command()));
        progress.take(new Request.CheckOver(nowNanos));
    }

    private void check(List<LevelCommand> commands) {
        for (LevelCommand each : commands) {
            if (each.verb() == LevelCommand.Verb.CHECK) {
                CheckKind kind = Coded.find(CheckKind.class, each.detail()).orElseThrow();
                for (int move = 0; move <= kind.moves(); move++) {
                    inStage(ShownPlan.check(
                            words.of(new Request.Asked(nowNanos, kind, move, wishes.skirtHz(), wishes.imageDialHz()))));
                }
            }
        }
    }

    @Override
    public void feed(Order.Feed it) {
        stageHead();
        Request.GeneratorStands stands =
                new Request.GeneratorStands(nowNanos, it.setup().generatorHz().orElseThrow(), Double.NaN);
        inStage(ShownPlan.setUp(words.of(stands)));
        progress.take(stands);
    }

    @Override
    public void finish(Order.Finish it) {}
}
