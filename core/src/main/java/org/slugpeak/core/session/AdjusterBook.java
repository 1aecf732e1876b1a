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

    /**
     * A hundredth of a level is some ten steps of the last digit of a meter with 4000 counts, and as far from its rest as a rest is known:
     * of less nobody knows how many decibels it is.
     */
    private static final double MOST_DB = 40;

    private String name = "";
    private double before = Double.NaN;
    private Level present = Level.UNKNOWN;
    private Level held = Level.UNKNOWN;
    private boolean heldNow;

    Adjuster begin(long tNanos, String newName) {
        name = newName;
        before = present.asRead();
        held = Level.UNKNOWN;
        heldNow = false;
        return new Adjuster(tNanos, name, Adjuster.Action.BEGIN, before, Double.NaN, Double.NaN);
    }

    /** The smoothed level, after each reading. */
    void level(double asRead, double onScale) {
        if (Double.isNaN(asRead)) {
            return;
        }
        present = new Level(asRead, onScale);
        if (Double.isNaN(before)) {
            before = asRead;
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

    /**
     * Empty where no adjuster is begun. Around a zero there is no ratio: what was gained there has no decibels. The level before is put
     * on the scale as it is known by now; no turn of the generator had been made then.
     */
    Optional<Adjuster> end(long tNanos, Adjuster.Action action, Seek sought, DoubleUnaryOperator straight) {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        Level after = held.isUnknown() ? present : held;
        double ratio = Math.abs(after.onScale() / straight.applyAsDouble(before));
        double gainDb = sought.signCounts() ? Double.NaN : Decibels.of(ratio);
        Adjuster ended = new Adjuster(
                tNanos, name, action, before, after.asRead(), Math.abs(gainDb) <= MOST_DB ? gainDb : Double.NaN);
        name = "";
        return Optional.of(ended);
    }
}
