package org.slugpeak.bridge.sim;

import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.receiver.Part;

/** The chores there are. */
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
            public boolean isDone(Bench bench) {
                return bench.nowNanos() >= untilNanos;
            }
        };
    }

    /** Turns one part until the hand lets go of it. */
    static Chore peak(Part part, int direction) {
        return new Chore() {
            @Override
            public void begin(Bench bench, SourceListener listener) {
                listener.nextAdjuster(part.label());
                bench.hand().begin(part, direction, bench.nowNanos());
            }

            @Override
            public boolean isDone(Bench bench) {
                return bench.hand().isFinished();
            }
        };
    }

    /** Says something to whoever watches. */
    static Chore say(String text) {
        return new Chore() {
            @Override
            public void begin(Bench bench, SourceListener listener) {
                listener.mark(text);
            }

            @Override
            public boolean isDone(Bench bench) {
                return true;
            }
        };
    }
}
