package org.slugpeak.core.level;

import java.util.Locale;
import java.util.Optional;
import org.slugpeak.core.word.Coded;

/**
 * What the user tells the level watch. A command travels as the text of a mark, so that it stands in the session log like any
 * mark, and a replay that sets the same marks does the same: {@code level: rest}, {@code level: cut 0.5},
 * {@code level: point detector}.
 *
 * <p>Immutable; any thread may use it.
 *
 * @param verb what to do
 * @param detail a word or number; empty where the verb needs none
 */
public record LevelCommand(Verb verb, String detail) {

    private static final String PREFIX = "level: ";

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
        CUT
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
     * The text of the mark that carries the command.
     *
     * @return one line
     */
    public String text() {
        String word = PREFIX + verb.name().toLowerCase(Locale.ROOT);
        return detail.isEmpty() ? word : word + " " + detail;
    }

    /**
     * Reads the text of a mark.
     *
     * @param text of any mark
     * @return the command that it carries; empty for an ordinary mark, and for a command that cannot be understood
     */
    public static Optional<LevelCommand> parse(String text) {
        if (!text.startsWith(PREFIX)) {
            return Optional.empty();
        }
        String[] words = text.substring(PREFIX.length()).split(" ", 2);
        for (Verb verb : Verb.values()) {
            if (verb.name().toLowerCase(Locale.ROOT).equals(words[0])) {
                LevelCommand command = new LevelCommand(verb, words.length > 1 ? words[1] : "");
                return command.isSound() ? Optional.of(command) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private boolean isSound() {
        return switch (verb) {
            case POINT -> Coded.find(MeterPoint.class, detail).isPresent();
            case CHECK -> Coded.find(CheckKind.class, detail).isPresent();
            case CUT -> isPositive(detail);
            case DONE, CANCEL, REPAIRED -> detail.isEmpty();
        };
    }

    private static boolean isPositive(String number) {
        try {
            return Double.parseDouble(number) > 0;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    /**
     * The detail as a number.
     *
     * @return the factor of a {@link Verb#CUT}
     */
    double factor() {
        return Double.parseDouble(detail);
    }
}
