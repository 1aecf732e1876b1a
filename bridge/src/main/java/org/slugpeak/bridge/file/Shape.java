package org.slugpeak.bridge.file;

import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * One way in which the lines of a text may be meant. Immutable.
 *
 * @param separator between columns
 * @param point what stands before the fraction of a number
 */
record Shape(Separator separator, char point) {

    static final char NUMBER = 'n';
    static final char TIME = 't';
    static final char WORD = 'w';
    static final char NOTHING = '-';

    /** Stands in place of a number, such as {@code OL}; or it is a word, such as the state that a meter was in. */
    static final char STAND_IN = 's';

    List<String> cells(byte[] line) {
        Fields fields = new Fields();
        fields.split(line, 0, line.length, separator);
        return fields.texts();
    }

    /** What each cell is, a letter each. */
    String kinds(List<String> cells) {
        StringBuilder kinds = new StringBuilder();
        cells.forEach(cell -> kinds.append(kind(cell)));
        return kinds.toString();
    }

    private char kind(String cell) {
        byte[] bytes = cell.getBytes(StandardCharsets.UTF_8);
        if (cell.isEmpty()) {
            return NOTHING;
        }
        if (Special.isWord(bytes, 0, bytes.length)) {
            return STAND_IN;
        }
        boolean halfComma = point == ',' && (cell.startsWith(",") || cell.endsWith(","));
        if (!halfComma && NumberCell.parse(cell, point).isPresent()) {
            return NUMBER;
        }
        return TimeText.parse(cell).isPresent() ? TIME : WORD;
    }

    /** Whether two lines may belong to one table; words at the end of a line may be missing. */
    static boolean alike(String kinds, String others) {
        String longer = kinds.length() > others.length() ? kinds : others;
        int common = Math.min(kinds.length(), others.length());
        for (int i = 0; i < longer.length(); i++) {
            char one = i < common ? kinds.charAt(i) : WORD;
            char other = i < common ? others.charAt(i) : longer.charAt(i);
            if (one != other && !fits(one, other) && !fits(other, one)) {
                return false;
            }
        }
        return common > 0;
    }

    /** Whether the first says no more of its column than the second. */
    static boolean fits(char one, char other) {
        return one == NOTHING || (one == STAND_IN && (other == NUMBER || other == WORD));
    }
}
