package org.slugpeak.bridge.sim;

import java.util.function.Consumer;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.receiver.Part;

/** The simple chores there are. */
final class Chores {

    private Chores() {}

    /** Nothing for a while. */
    static Chore rest(double seconds) {
        return new Chore() {
            private long untilNanos;

            @Override
            public void begin(Bench bench, SourceListener listener) {
                untilNanos = bench.nowNanos() + (long) (seconds * 1e9);
            }

            @Override
            public boolean step(Bench bench, SourceListener listener) {
                return bench.nowNanos() >= untilNanos;
            }
        };
    }

    /** Turns one part until the hand lets go of it. */
    static Chore peak(Part part) {
        return new Chore() {
            @Override
            public void begin(Bench bench, SourceListener listener) {
                listener.nextAdjuster(part.label());
                bench.hand().begin(part, bench.random().nextBoolean() ? 1 : -1, bench.nowNanos());
            }

            @Override
            public boolean step(Bench bench, SourceListener listener) {
                return bench.hand().isFinished();
            }
        };
    }

    /** Says something to whoever watches, or commands the level watch. */
    static Chore say(String text) {
        return new Chore() {
            @Override
            public void begin(Bench bench, SourceListener listener) {
                listener.mark(text);
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
