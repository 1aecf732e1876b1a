package org.slugpeak.core.session;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.peak.Seek;

/**
 * Remembers of the adjuster at hand what its record will say: the level when it was begun and the level when it was left, as
 * read, and the gain between them on the finder's scale, where neither rest nor a turn of the generator counts.
 */
final class AdjusterBook {

    /**
     * A level.
     *
     * @param asRead in the unit of the readings
     * @param onScale above rest, as if the generator had not been changed
     */
    private record Level(double asRead, double onScale) {
        static final Level UNKNOWN = new Level(Double.NaN, Double.NaN);

        boolean isUnknown() {
            return Double.isNaN(asRead);
        }
    }

    private String name = "";
    private Level before = Level.UNKNOWN;
    private Level present = Level.UNKNOWN;
    private Level held = Level.UNKNOWN;
    private boolean heldNow;

    /** The scale is a new one for each adjuster, so the level before is put on it. */
    Adjuster begin(long tNanos, String newName, DoubleUnaryOperator toScale) {
        name = newName;
        before = new Level(present.asRead(), toScale.applyAsDouble(present.asRead()));
        held = Level.UNKNOWN;
        heldNow = false;
        return new Adjuster(tNanos, name, Adjuster.Action.BEGIN, before.asRead(), Double.NaN, Double.NaN);
    }

    /** The smoothed level, after each reading. */
    void level(double asRead, double onScale) {
        if (Double.isNaN(asRead)) {
            return;
        }
        present = new Level(asRead, onScale);
        if (before.isUnknown()) {
            before = present;
        }
        if (heldNow) {
            held = present;
            heldNow = false;
        }
    }

    void see(SessionRecord record) {
        if (record instanceof Held) {
            heldNow = true;
        }
    }

    /** Whether an adjuster is begun and was held. */
    boolean isHeld() {
        return !name.isEmpty() && !held.isUnknown();
    }

    /** Empty where no adjuster is begun. Around a zero there is no ratio: what was gained there has no decibels. */
    Optional<Adjuster> end(long tNanos, Adjuster.Action action, Seek sought) {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        Level after = held.isUnknown() ? present : held;
        double gainDb = sought.signCounts() ? Double.NaN : Decibels.of(Math.abs(after.onScale() / before.onScale()));
        Adjuster ended = new Adjuster(
                tNanos, name, action, before.asRead(), after.asRead(), Double.isFinite(gainDb) ? gainDb : Double.NaN);
        name = "";
        return Optional.of(ended);
    }
}
