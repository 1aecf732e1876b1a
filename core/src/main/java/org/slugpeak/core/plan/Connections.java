package org.slugpeak.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slugpeak.core.safety.SafeHands;

/**
 * What is connected to the set, and in what words it is changed: everything that a hand has to do at terminals before a step is
 * one job, so that the set goes off once for all of it. One thread at a time.
 */
final class Connections {

    private Optional<Setup> setUp = Optional.empty();
    private Optional<Damping> fitted = Optional.empty();

    /**
     * What is to be done.
     *
     * @param say in words
     * @param atTerminals whether a hand goes into the set for it
     */
    record Change(Order.Say say, boolean atTerminals) {}

    /** Nothing is known to be connected. */
    void forget() {
        setUp = Optional.empty();
        fitted = Optional.empty();
    }

    /** Whether the set-up of a step differs from the one that stands. */
    boolean changesFor(PlanStep step) {
        return setUp.isPresent() && !setUp.get().equals(step.setup());
    }

    boolean isDamped() {
        return fitted.isPresent();
    }

    /** Everything for a step; empty where all stands as it should. */
    Optional<Change> goTo(PlanStep step) {
        Setup wanted = step.setup();
        boolean sameSetUp = setUp.equals(Optional.of(wanted));
        List<String> jobs = dampingJobs(step.damping());
        boolean leadsMove = setUp.map(before -> !wanted.hasLeadsOf(before)).orElse(!jobs.isEmpty());
        String leads = Directions.leads(wanted);
        if (leadsMove && !leads.isEmpty()) {
            jobs.add(0, leads);
        }
        String text = words(jobs, sameSetUp ? Optional.empty() : Optional.of(wanted));
        setUp = Optional.of(wanted);
        fitted = step.damping();
        String topic = sameSetUp ? Topics.DAMPING : Topics.SET_UP;
        double ohms = fitted.map(Damping::ohms).orElse(Double.NaN);
        return text.isEmpty()
                ? Optional.empty()
                : Optional.of(new Change(new Order.Say(topic, text, ohms), !jobs.isEmpty()));
    }

    private List<String> dampingJobs(Optional<Damping> wanted) {
        List<String> jobs = new ArrayList<>();
        if (!fitted.equals(wanted)) {
            fitted.ifPresent(it -> jobs.add(Directions.undamp(it)));
            wanted.ifPresent(it -> jobs.add(Directions.damp(it)));
        }
        return jobs;
    }

    private String words(List<String> jobs, Optional<Setup> changed) {
        if (jobs.isEmpty() && setUp.isEmpty()) {
            return changed.map(Directions::firstSetUp).orElse("");
        }
        List<String> parts = new ArrayList<>();
        if (!jobs.isEmpty()) {
            parts.add(SafeHands.at(String.join("; ", jobs)));
        }
        changed.map(Directions::knobs).filter(knobs -> !knobs.isEmpty()).ifPresent(parts::add);
        return String.join("; ", parts);
    }

    /** Takes the damping off, where there is any. */
    Optional<Order.Say> undamp() {
        Optional<Order.Say> say =
                fitted.map(it -> new Order.Say(Topics.DAMPING, SafeHands.at(Directions.undamp(it)), it.ohms()));
        fitted = Optional.empty();
        return say;
    }
}
