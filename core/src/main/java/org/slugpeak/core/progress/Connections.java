package org.slugpeak.core.progress;

import java.util.Optional;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.plan.Setup;

/**
 * What is connected to the set, and what has to be changed for a step: everything that a hand has to do at terminals before it is
 * one job, so that the set goes off once for all of it. One thread at a time.
 */
final class Connections {

    private Optional<Setup> setUp = Optional.empty();
    private Optional<Damping> fitted = Optional.empty();

    /** Nothing is known to be connected. */
    void forget() {
        setUp = Optional.empty();
        fitted = Optional.empty();
    }

    /** Whether a set-up differs from the one that stands. */
    boolean changesFor(Setup wanted) {
        return setUp.isPresent() && !setUp.get().equals(wanted);
    }

    /** Everything for a step. From here on it counts as done. */
    Preparation goTo(Setup wanted, Optional<Damping> damping) {
        boolean sameSetUp = setUp.equals(Optional.of(wanted));
        boolean dampingChanges = !fitted.equals(damping);
        boolean leadsMove = wanted.hasLeads()
                && setUp.map(before -> !wanted.hasLeadsOf(before)).orElse(dampingChanges);
        boolean first = setUp.isEmpty() && !dampingChanges;
        Preparation preparation =
                new Preparation(sameSetUp ? Optional.empty() : Optional.of(wanted), first, leadsMove, fitted, damping);
        setUp = Optional.of(wanted);
        fitted = damping;
        return preparation;
    }

    /** Takes the damping off, where there is any. */
    Optional<Damping> undamp() {
        Optional<Damping> off = fitted;
        fitted = Optional.empty();
        return off;
    }
}
