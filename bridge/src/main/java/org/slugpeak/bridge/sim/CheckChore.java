package org.slugpeak.bridge.sim;

import java.util.Optional;
import java.util.OptionalInt;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.receiver.Generator;
import org.slugpeak.core.receiver.SetOnBench;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/** Starts a check of the level and makes the moves that it asks for. One thread at a time. */
final class CheckChore implements Chore {

    private static final double THINKING_SECONDS = 0.4;
    private static final double SERIES_OHM = 1e6;

    private static final double HALF_A_TURN = 0.5;

    private final CheckKind kind;
    private final Adjustable part;
    private final double imageHz;
    private double turnsBefore;
    private Optional<Generator> generatorBefore = Optional.empty();
    private double dialBeforeHz;
    private OptionalInt asked = OptionalInt.empty();
    private double skirtHz;
    private long dueNanos;
    private boolean over;

    /** With what is turned where the check asks for it, and how far below the pointer the image is looked for. */
    CheckChore(CheckKind kind, Adjustable part, double imageHz) {
        this.kind = kind;
        this.part = part;
        this.imageHz = imageHz;
    }

    @Override
    public void begin(Bench bench, SourceListener listener) {
        remember(bench);
        listener.command(new Instruction.Level(LevelCommand.check(kind)));
    }

    /** For a check that somebody else has started: how things stand now is how they are put back. */
    void remember(Bench bench) {
        generatorBefore = Optional.of(bench.set().generator());
        dialBeforeHz = bench.set().dialHz();
        turnsBefore = part.turns();
        bench.other().drop();
    }

    @Override
    public void hear(SessionRecord record, Bench bench) {
        if (record instanceof Request.Asked it) {
            asked = OptionalInt.of(it.move());
            skirtHz = it.skirtHz();
            dueNanos = bench.nowNanos() + (long) (THINKING_SECONDS * 1e9);
        }
        if (record instanceof Request.CheckDropped) {
            asked = OptionalInt.empty();
            putBack(bench);
        }
        over = over || record instanceof Request.CheckOver;
    }

    @Override
    public boolean step(Bench bench, SourceListener listener) {
        if (asked.isPresent() && bench.nowNanos() >= dueNanos) {
            int move = asked.getAsInt();
            asked = OptionalInt.empty();
            act(move, bench);
            if (move == kind.moves() || !kind.seesStep()) {
                listener.command(new Instruction.Level(LevelCommand.done()));
            }
        }
        return over;
    }

    private void act(int move, Bench bench) {
        if (move == kind.moves()) {
            putBack(bench);
            return;
        }
        Generator before = generatorBefore.orElseThrow();
        SetOnBench set = bench.set();
        kind.generatorMove(move, skirtHz)
                .ifPresent(it ->
                        set.feed(before.times(it.levelFactor()).withFrequency(before.frequencyHz() + it.offsetHz())));
        switch (kind) {
            case LOADING -> bench.seriesResistor(SERIES_OHM);
            case EFFECT -> part.turnTo(turnsBefore + HALF_A_TURN);
            case IMAGE -> set.tune(dialBeforeHz - imageHz);
            default -> {}
        }
    }

    private void putBack(Bench bench) {
        bench.set().feed(generatorBefore.orElseThrow());
        bench.set().tune(dialBeforeHz);
        part.turnTo(turnsBefore);
        bench.seriesResistor(0);
    }
}
