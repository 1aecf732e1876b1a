package org.slugpeak.core.plan;

import java.util.Optional;

/**
 * What has to be done before a step: what differs from how things stand. Everything that a hand does at terminals for it is one
 * job, so that the set goes off once for all of it. Immutable; any thread may use it.
 *
 * @param setup the set-up that is wanted; empty where it stands already
 * @param first whether it is the first one, with which the leads are on already and nothing else is done at terminals
 * @param movesLeads whether a lead goes to another terminal
 * @param before the damping resistor that is fitted
 * @param wanted the damping resistor that the step wants
 */
public record Preparation(
        Optional<Setup> setup, boolean first, boolean movesLeads, Optional<Damping> before, Optional<Damping> wanted) {

    /**
     * The resistor that comes off.
     *
     * @return empty where none does
     */
    public Optional<Damping> takesOff() {
        return before.equals(wanted) ? Optional.empty() : before;
    }

    /**
     * The resistor that goes on.
     *
     * @return empty where none does
     */
    public Optional<Damping> putsOn() {
        return before.equals(wanted) ? Optional.empty() : wanted;
    }

    /**
     * Whether a hand goes into the set for it.
     *
     * @return true where a lead or a resistor is moved
     */
    public boolean isAtTerminals() {
        return movesLeads || takesOff().isPresent() || putsOn().isPresent();
    }

    /**
     * Whether nothing is to be done or looked at.
     *
     * @return true where all stands as it should
     */
    public boolean isNothing() {
        boolean anything =
                setup.map(it -> it.hasKnobs() || (first && it.hasLeads())).orElse(false);
        return !anything && !isAtTerminals();
    }
}
