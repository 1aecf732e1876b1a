package org.slugpeak.bridge.sim;

import java.util.Optional;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.receiver.Generator;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.receiver.Tarnfield;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.SessionRecord;

/** Starts a check of the level and makes the moves that it asks for. One thread at a time. */
final class CheckChore implements Chore {

    private static final double THINKING_SECONDS = 0.4;
    private static final double SERIES_OHM = 1e6;

    private static final double HALF_A_TURN = 0.5;

    private final CheckKind kind;
    private final Part part;
    private double turnsBefore;
    private Optional<Generator> generatorBefore = Optional.empty();
    private double dialBeforeHz;
    private Optional<String> asked = Optional.empty();
    private long dueNanos;
    private boolean over;

    CheckChore(CheckKind kind) {
        this(kind, Part.T2_TOP);
    }

    /** With the part that is turned where the check asks to turn one. */
    CheckChore(CheckKind kind, Part part) {
        this.kind = kind;
        this.part = part;
    }

    @Override
    public void begin(Bench bench, SourceListener listener) {
        remember(bench);
        listener.mark(LevelCommand.check(kind).text());
    }

    /** For a check that somebody else has started: how things stand now is how they are put back. */
    void remember(Bench bench) {
        generatorBefore = Optional.of(bench.receiver().generator());
        dialBeforeHz = bench.receiver().dialHz();
        turnsBefore = bench.receiver().turns(part);
        bench.other().drop();
    }

    @Override
    public void hear(SessionRecord record, Bench bench) {
        record.match(new Verdicts().onAdvice(advice -> advised(advice, bench.nowNanos())));
    }

    private void advised(Advice advice, long tNanos) {
        if (advice.topic().equals("ask")) {
            asked = Optional.of(advice.text());
            dueNanos = tNanos + (long) (THINKING_SECONDS * 1e9);
        } else if (advice.topic().equals("check-over")) {
            over = true;
        }
    }

    @Override
    public boolean step(Bench bench, SourceListener listener) {
        if (asked.isPresent() && bench.nowNanos() >= dueNanos) {
            String move = asked.get();
            asked = Optional.empty();
            act(move, bench);
            if (move.contains("say done") || move.equals(kind.restore())) {
                listener.mark(LevelCommand.done().text());
            }
        }
        return over;
    }

    private void act(String move, Bench bench) {
        Generator before = generatorBefore.orElseThrow();
        SimulatedReceiver receiver = bench.receiver();
        if (move.equals(kind.restore())) {
            receiver.feed(before);
            receiver.tune(dialBeforeHz);
            receiver.set(part, turnsBefore);
            bench.seriesResistor(0);
            return;
        }
        boolean first = move.equals(kind.moves().get(0));
        switch (kind) {
            case REST -> receiver.feed(before.withVolts(0));
            case LEVEL -> receiver.feed(before.times(0.5));
            case LOADING -> bench.seriesResistor(SERIES_OHM);
            case EFFECT -> receiver.set(part, turnsBefore + HALF_A_TURN);
            case SKIRTS -> receiver.feed(before.withFrequency(before.frequencyHz() + (first ? 5e3 : -5e3)));
            case OTHER_IF -> receiver.feed(before.withFrequency(before.frequencyHz() + (first ? -10e3 : 10e3)));
            case HARMONIC -> receiver.feed(before.withFrequency(before.frequencyHz() + (first ? 2e3 : -2e3)));
            case IMAGE -> receiver.tune(dialBeforeHz - 2 * Tarnfield.IF_HZ);
        }
    }
}
