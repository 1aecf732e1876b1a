package org.slugpeak.cli.quantity;

import java.util.Locale;
import picocli.CommandLine.TypeConversionException;

/** Words on the command line that are the names of constants. Stateless. */
public final class EnumWord {

    private EnumWord() {}

    /**
     * The constant that a word names.
     *
     * @param type of the constants
     * @param word as typed, capitals or not
     * @param known the words there are, for the user
     * @param <E> the type
     * @return the constant
     * @throws TypeConversionException where there is none
     */
    public static <E extends Enum<E>> E of(Class<E> type, String word, String known) {
        for (E each : type.getEnumConstants()) {
            if (each.name().equals(word.toUpperCase(Locale.ROOT))) {
                return each;
            }
        }
        throw new TypeConversionException("'" + word + "' is none of " + known);
    }
}
