package org.slugpeak.cli.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.progress.Order;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Request;

/** Goes through a plan by key alone, every round there can be, and keeps all that is said on the way. */
final class SpokenPlan implements Order.Matcher {

    private static final int MORE_THAN_ANY_PLAN_NEEDS = 10_000;

    private final RecordSentences words = new RecordSentences();
    private final List<String> sentences = new ArrayList<>();
    private final AlignmentProgress progress;
    private long nowNanos;
    private String adjuster = "";

    SpokenPlan(Plan plan) {
        progress = new AlignmentProgress(plan);
        for (int i = 0; i < MORE_THAN_ANY_PLAN_NEEDS && !progress.isOver(); i++) {
            nowNanos += 100_000_000L;
            progress.take(new ReadingTaken(Reading.of(nowNanos, 1), 1, 1, Double.NaN, 1, Trend.STEADY));
            obey();
            progress.take(new NoPeak(nowNanos, NoPeakReason.END_OF_TRAVEL));
            obey();
            progress.next();
            obey();
        }
        if (!progress.isOver()) {
            throw new IllegalStateException(plan.name() + " does not end");
        }
    }

    List<String> sentences() {
        return sentences.stream().distinct().toList();
    }

    private void obey() {
        for (Optional<Order> order = progress.nextOrder(); order.isPresent(); order = progress.nextOrder()) {
            order.get().match(this);
        }
    }

    @Override
    public void begin(Order.Begin it) {
        adjuster = it.adjuster();
    }

    /** Every round gains much, so that all of them are gone through, with what is said of that. */
    @Override
    public void end(Order.End it) {
        progress.take(new Adjuster(nowNanos, adjuster, it.action(), 1, 1, 1));
    }

    @Override
    public void say(Order.Say it) {
        sentences.add(words.of(it.what().at(nowNanos)));
    }

    @Override
    public void level(Order.Level it) {
        progress.take(new Request.CheckOver(nowNanos));
    }

    @Override
    public void finish(Order.Finish it) {}
}
