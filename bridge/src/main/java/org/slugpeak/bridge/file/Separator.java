package org.slugpeak.bridge.file;

import org.slugpeak.bridge.source.Understanding;

/** What stands between the columns of a text. Immutable. */
enum Separator {
    /** Also for lines of one column, which have none. */
    COMMAS(Understanding.Separation.COMMAS, ','),
    /** As spreadsheets write where the comma is the decimal point. */
    SEMICOLONS(Understanding.Separation.SEMICOLONS, ';'),
    /** One tab. */
    TABS(Understanding.Separation.TABS, '\t'),
    /** Any number of blanks. */
    BLANKS(Understanding.Separation.BLANKS, ' ');

    private final Understanding.Separation told;
    private final byte letter;

    Separator(Understanding.Separation told, char letter) {
        this.told = told;
        this.letter = (byte) letter;
    }

    /** What a user is told of it. */
    Understanding.Separation told() {
        return told;
    }

    byte letter() {
        return letter;
    }

    /** Whether several in a row are one. */
    boolean repeats() {
        return this == BLANKS;
    }
}
