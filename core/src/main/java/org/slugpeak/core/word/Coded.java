package org.slugpeak.core.word;

import java.util.Locale;
import java.util.Optional;

/** What has a word of its own on the command line or in records. */
public interface Coded {

    /**
     * The word.
     *
     * @return lower case, hyphenated
     */
    String code();

    /**
     * The word of a constant that is called as in code.
     *
     * @param constant of an enumeration
     * @return its name in lower case, hyphenated
     */
    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Finds the constant that a word names.
     *
     * @param type of the constants
     * @param code as from {@link #code()}
     * @param <E> the type
     * @return empty for any other word
     */
    static <E extends Enum<E> & Coded> Optional<E> find(Class<E> type, String code) {
        for (E each : type.getEnumConstants()) {
            if (each.code().equals(code)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
