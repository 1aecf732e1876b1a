package org.slugpeak.bridge.line;

import java.util.Optional;

/**
 * The line in which an instrument says what it is and how it is set, as {@code key=value} words. Immutable; any thread may
 * use it.
 *
 * @param startsWith the words with which it begins
 * @param version the word that must follow; empty where none does
 * @param nameKey key of the instrument's name
 * @param unitKey key of the unit
 * @param scaleKey key of the units for one count
 * @param lowKey key of the smallest counts
 * @param highKey key of the largest counts
 * @param restart the {@code key=value} word that says that the instrument has just been reset; empty where there is none
 */
record StartFormat(
        String startsWith,
        Optional<String> version,
        String nameKey,
        String unitKey,
        String scaleKey,
        String lowKey,
        String highKey,
        Optional<String> restart) {}
