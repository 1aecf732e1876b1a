package org.slugpeak.core.level;

import java.util.Optional;

/**
 * The one suspicion that stands. While it stands no other is raised: most faults look like others once the work goes on, and one
 * is repaired at a time. One thread at a time.
 */
final class Standing {

    private final LevelListener listener;
    private Optional<Suspicion> present = Optional.empty();

    Standing(LevelListener listener) {
        this.listener = listener;
    }

    /** Whether no suspicion stands. */
    boolean isClear() {
        return present.isEmpty();
    }

    /** Raises a suspicion, unless one stands. */
    void raise(long tNanos, Suspicion suspicion, double amount) {
        if (present.isEmpty()) {
            present = Optional.of(suspicion);
            listener.suspected(tNanos, suspicion, amount);
        }
    }

    /** What caused this suspicion has gone. */
    void clear(long tNanos, Suspicion suspicion) {
        if (present.isPresent() && present.get() == suspicion) {
            present = Optional.empty();
            listener.noLongerSuspected(tNanos, suspicion);
        }
    }

    /** The user has looked after it. */
    void clear() {
        present = Optional.empty();
    }
}
