package org.slugpeak.core.rehearsal;

import org.slugpeak.core.receiver.Tank;

/** A winding of an IF transformer with its slug, and a resistor across it for a while. One thread at a time. */
final class Winding {

    private final Tank tuned;
    private final Knob slug;
    private double damping = Double.POSITIVE_INFINITY;

    Winding(Tank tuned, Knob slug) {
        this.tuned = tuned;
        this.slug = slug;
    }

    Knob slug() {
        return slug;
    }

    boolean isTurnedBy(String name) {
        return slug.name().equals(name);
    }

    /** A resistor across it, ohm; infinite for none. */
    void damp(double ohms) {
        damping = ohms;
    }

    Tank now() {
        Tank turned = tuned.withInductanceChanged(slug.effect());
        return Double.isInfinite(damping) ? turned : turned.dampedBy(damping);
    }

    Tank tuned() {
        return tuned;
    }
}
