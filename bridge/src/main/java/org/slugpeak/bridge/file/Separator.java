package org.slugpeak.bridge.file;

/** What stands between the columns of a text. Immutable. */
enum Separator {
    /** Also for lines of one column, which have none. */
    COMMAS("commas", ','),
    /** As spreadsheets write where the comma is the decimal point. */
    SEMICOLONS("semicolons", ';'),
    /** One tab. */
    TABS("tabs", '\t'),
    /** Any number of blanks. */
    BLANKS("blanks", ' ');

    private final String words;
    private final byte letter;

    Separator(String words, char letter) {
        this.words = words;
        this.letter = (byte) letter;
    }

    String words() {
        return words;
    }

    byte letter() {
        return letter;
    }

    /** Whether several in a row are one. */
    boolean repeats() {
        return this == BLANKS;
    }
}
