package org.slugpeak.bridge.sim;

import java.util.function.Consumer;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Instruction;

/** The simple chores there are. */
final class Chores {

    private Chores() {}

    /** Nothing for a while. */
    static Chore rest(double seconds) {
        return new Chore() {
            private long begunNanos;

            @Override
            public void begin(Bench bench, SourceListener listener) {
                begunNanos = bench.nowNanos();
            }

            @Override
            public boolean step(Bench bench, SourceListener listener) {
                return (bench.nowNanos() - begunNanos) / 1e9 >= seconds;
            }
        };
    }

    /** Begins something that is no part of the set: the best so far is forgotten. */
    static Chore begin(String name) {
        return new Chore() {
            @Override
            public void begin(Bench bench, SourceListener listener) {
                listener.adjusterEnded(Adjuster.Action.DONE);
                listener.nextAdjuster(name);
            }

            @Override
            public boolean step(Bench bench, SourceListener listener) {
                return true;
            }
        };
    }

    /** Says something to whoever watches. */
    static Chore say(String text) {
        return saying(listener -> listener.note(text));
    }

    /** Commands the level watch. */
    static Chore command(LevelCommand command) {
        return saying(listener -> listener.command(new Instruction.Level(command)));
    }

    private static Chore saying(Consumer<SourceListener> what) {
        return new Chore() {
            @Override
            public void begin(Bench bench, SourceListener listener) {
                what.accept(listener);
            }

            @Override
            public boolean step(Bench bench, SourceListener listener) {
                return true;
            }
        };
    }

    /** Sets something on the bench. */
    static Chore set(Consumer<Bench> what) {
        return new Chore() {
            @Override
            public void begin(Bench bench, SourceListener listener) {
                what.accept(bench);
            }

            @Override
            public boolean step(Bench bench, SourceListener listener) {
                return true;
            }
        };
    }
}
