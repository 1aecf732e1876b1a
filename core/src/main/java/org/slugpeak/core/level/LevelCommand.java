package org.slugpeak.core.level;

/**
 * What the user tells the level watch. It stands in the session log, and a replay that tells the same does the same.
 *
 * <p>Immutable; any thread may use it.
 *
 * @param verb what to do
 * @param detail a word or number; empty where the verb needs none
 */
public record LevelCommand(Verb verb, String detail) {

    /** What can be commanded. */
    public enum Verb {
        /** The meter is at the point that the detail names. */
        POINT,
        /** Starts the check that the detail names. */
        CHECK,
        /** What was asked for has been done. */
        DONE,
        /** Drops the check that is under way. */
        CANCEL,
        /** What was suspected has been looked after: other suspicions may be raised again. */
        REPAIRED,
        /** The generator is about to be changed by the factor in the detail. */
        CUT,
        /** The change that was announced is made from here: until the generator has turned, what is read is neither before it nor after it. */
        TURNING,
        /** The generator, which is set from here, has been changed by the factor in the detail, as it reads back. */
        TURNED,
        /** Nobody knows how the generator, which is set from here, stands; until it has turned, nothing that is read counts. */
        AWAY,
        /** From now on skirts are compared so many hertz to either side as the detail says. */
        SKIRTS_AT,
        /** The signal of the present adjuster is met as an image where on the dial the detail says, Hz. */
        IMAGE_AT,
        /** The reading is to stay below so many volts above rest, as the detail says: a plan may know better than the point. */
        WINDOW
    }

    /**
     * The meter is at this point.
     *
     * @param point where
     * @return the command
     */
    public static LevelCommand at(MeterPoint point) {
        return new LevelCommand(Verb.POINT, point.code());
    }

    /**
     * Starts a check.
     *
     * @param kind which
     * @return the command
     */
    public static LevelCommand check(CheckKind kind) {
        return new LevelCommand(Verb.CHECK, kind.code());
    }

    /**
     * What was asked for has been done.
     *
     * @return the command
     */
    public static LevelCommand done() {
        return new LevelCommand(Verb.DONE, "");
    }

    /**
     * Drops the check that is under way.
     *
     * @return the command
     */
    public static LevelCommand cancel() {
        return new LevelCommand(Verb.CANCEL, "");
    }

    /**
     * What was suspected has been looked after.
     *
     * @return the command
     */
    public static LevelCommand repaired() {
        return new LevelCommand(Verb.REPAIRED, "");
    }

    /**
     * The generator is about to be changed.
     *
     * @param factor of its output; positive
     * @return the command
     */
    public static LevelCommand cut(double factor) {
        return new LevelCommand(Verb.CUT, Double.toString(factor));
    }

    /**
     * The change that was announced is made from here, and {@link #turned} will say when it is done.
     *
     * @return the command
     */
    public static LevelCommand turning() {
        return new LevelCommand(Verb.TURNING, "");
    }

    /**
     * The generator has been changed, as it was announced.
     *
     * @param factor of its output, as it says itself; positive
     * @return the command
     */
    public static LevelCommand turned(double factor) {
        return new LevelCommand(Verb.TURNED, Double.toString(factor));
    }

    /**
     * Nobody knows how the generator stands, until it has turned.
     *
     * @return the command
     */
    public static LevelCommand away() {
        return new LevelCommand(Verb.AWAY, "");
    }

    /**
     * From now on skirts are compared elsewhere.
     *
     * @param hz to either side, Hz; positive
     * @return the command
     */
    public static LevelCommand skirtsAt(double hz) {
        return new LevelCommand(Verb.SKIRTS_AT, Double.toString(hz));
    }

    /**
     * The signal of the present adjuster is met a second time, as an image.
     *
     * @param dialHz there on the dial, Hz; positive
     * @return the command
     */
    public static LevelCommand imageAt(double dialHz) {
        return new LevelCommand(Verb.IMAGE_AT, Double.toString(dialHz));
    }

    /**
     * The reading is to stay below a level; the next {@link Verb#POINT} brings its own.
     *
     * @param volts above rest, as a magnitude; positive
     * @return the command
     */
    public static LevelCommand below(double volts) {
        return new LevelCommand(Verb.WINDOW, Double.toString(volts));
    }

    /**
     * The detail as a number.
     *
     * @return the factor of a {@link Verb#CUT} or {@link Verb#TURNED}, Hz of a {@link Verb#SKIRTS_AT} or {@link Verb#IMAGE_AT}, volts of a
     *     {@link Verb#WINDOW}
     */
    public double number() {
        return Double.parseDouble(detail);
    }
}
