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
import org.slugpeak.core.session.SessionRecord;

/** Goes through a plan by key alone, and keeps all that is said on the way. */
public final class SpokenPlan implements Order.Matcher {

    private static final int MORE_THAN_ANY_PLAN_NEEDS = 10_000;

    private final RecordSentences words = new RecordSentences();
    private final List<String> sentences = new ArrayList<>();
    private final List<String> asked = new ArrayList<>();
    private final double gainDb;
    private final AlignmentProgress progress;
    private long nowNanos;
    private String adjuster = "";

    /** Every round there can be, since each gains much. */
    SpokenPlan(Plan plan) {
        this(plan, 1);
    }

    /**
     * As many rounds as a gain brings about.
     *
     * @param plan that is gone through
     * @param gainDb what each adjuster gains, dB
     */
    public SpokenPlan(Plan plan, double gainDb) {
        this.gainDb = gainDb;
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

    /** What the person is asked to do. */
    public List<String> asked() {
        return asked.stream().distinct().toList();
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

    @Override
    public void end(Order.End it) {
        progress.take(new Adjuster(nowNanos, adjuster, it.action(), 1, 1, gainDb));
    }

    @Override
    public void say(Order.Say it) {
        SessionRecord record = it.what().at(nowNanos);
        sentences.add(words.of(record));
        if (record instanceof Request) {
            asked.add(words.of(record));
        }
    }

    @Override
    public void level(Order.Level it) {
        progress.take(new Request.CheckOver(nowNanos));
    }

    @Override
    public void finish(Order.Finish it) {}
}
