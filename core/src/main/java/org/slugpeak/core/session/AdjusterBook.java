package org.slugpeak.core.session;

import java.util.Optional;

/** Remembers of the adjuster at hand what its record will say: the level when it was begun and the level when it was left. */
final class AdjusterBook {

    private String name = "";
    private double before = Double.NaN;
    private double present = Double.NaN;
    private double held = Double.NaN;

    Adjuster begin(long tNanos, String newName) {
        name = newName;
        before = present;
        held = Double.NaN;
        return new Adjuster(tNanos, name, Adjuster.Action.BEGIN, before, Double.NaN, Double.NaN);
    }

    /** The smoothed level, after each reading. */
    void level(double value) {
        present = value;
        if (Double.isNaN(before)) {
            before = value;
        }
    }

    void see(SessionRecord record) {
        if (record instanceof Held now) {
            held = now.value();
        }
    }

    /** Empty where no adjuster is begun. */
    Optional<Adjuster> end(long tNanos, Adjuster.Action action) {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        double after = Double.isNaN(held) ? present : held;
        double gainDb = 20 * Math.log10(Math.abs(after / before));
        Adjuster ended =
                new Adjuster(tNanos, name, action, before, after, Double.isFinite(gainDb) ? gainDb : Double.NaN);
        name = "";
        return Optional.of(ended);
    }
}
