package org.slugpeak.core.session;

import java.util.Optional;

/**
 * Remembers of the adjuster at hand what its record will say: the level when it was begun and the level when it was left. Levels
 * are kept twice: as read, for the record, and as the finder sees them, which goes on over a change of the generator and counts
 * from the resting reading, for the gain in decibels.
 */
final class AdjusterBook {

    /** A level as it was read, and as the finder sees it. */
    private record Level(double asRead, double corrected) {
        static final Level UNKNOWN = new Level(Double.NaN, Double.NaN);

        boolean isKnown() {
            return !Double.isNaN(asRead);
        }
    }

    private String name = "";
    private Level before = Level.UNKNOWN;
    private Level present = Level.UNKNOWN;
    private Level held = Level.UNKNOWN;
    private boolean holds;

    Adjuster begin(long tNanos, String newName) {
        name = newName;
        before = present;
        held = Level.UNKNOWN;
        holds = false;
        return new Adjuster(tNanos, name, Adjuster.Action.BEGIN, before.asRead(), Double.NaN, Double.NaN);
    }

    /** The smoothed level, after each reading. */
    void level(double asRead, double corrected) {
        if (Double.isNaN(asRead)) {
            return;
        }
        present = new Level(asRead, corrected);
        if (!before.isKnown()) {
            before = present;
        }
        if (holds && !held.isKnown()) {
            held = present;
        }
    }

    void see(SessionRecord record) {
        if (record instanceof Held) {
            holds = true;
            held = Level.UNKNOWN;
        }
    }

    /** Whether an adjuster is begun and was held. */
    boolean isHeld() {
        return !name.isEmpty() && holds;
    }

    /** Empty where no adjuster is begun. */
    Optional<Adjuster> end(long tNanos, Adjuster.Action action) {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        Level after = held.isKnown() ? held : present;
        double gainDb = 20 * Math.log10(Math.abs(after.corrected() / before.corrected()));
        Adjuster ended = new Adjuster(
                tNanos, name, action, before.asRead(), after.asRead(), Double.isFinite(gainDb) ? gainDb : Double.NaN);
        name = "";
        return Optional.of(ended);
    }
}
