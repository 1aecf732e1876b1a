package org.slugpeak.core.rehearsal;

import java.util.Locale;
import java.util.regex.Pattern;

/** What an adjuster of a tuned range is, as its name tells. Immutable; any thread may use it. */
enum PartKind {
    PADDER("padder", "\\bseries"),
    TRIMMER("trim", "\\bct?\\d"),
    COIL("slug|coil|core|induct", "\\bl\\d");

    private final Pattern word;
    private final Pattern mark;

    PartKind(String word, String mark) {
        this.word = Pattern.compile(word);
        this.mark = Pattern.compile(mark);
    }

    /** By a word, else by a letter and number; else a trimmer at the high end of the range and a coil at the low end. */
    static PartKind of(String name, boolean highEnd) {
        String lower = name.toLowerCase(Locale.ROOT);
        for (PartKind each : values()) {
            if (each.word.matcher(lower).find()) {
                return each;
            }
        }
        for (PartKind each : values()) {
            if (each.mark.matcher(lower).find()) {
                return each;
            }
        }
        return highEnd ? TRIMMER : COIL;
    }
}
