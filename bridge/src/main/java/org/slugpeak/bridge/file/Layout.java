package org.slugpeak.bridge.file;

import org.slugpeak.bridge.decimal.Decimal;
import org.slugpeak.bridge.source.BadInput;

/**
 * How the lines of one text are built, as its first line shows. Immutable.
 *
 * @param separator between columns
 * @param named whether the first line is a header line
 * @param columns what they hold
 */
record Layout(byte separator, boolean named, Columns columns) {

    /** One value a line, without a header line. */
    static Layout ofOneValue(boolean decimalComma) {
        return new Layout((byte) (decimalComma ? ';' : ','), false, Columns.OF_ONE_VALUE);
    }

    /** The layout that the first line shows; the fields hold its parts afterwards. */
    static Layout of(byte[] bytes, int from, int to, boolean decimalComma, Fields fields, String where)
            throws BadInput {
        byte separator = separator(bytes, from, to, decimalComma, where);
        int count = fields.split(bytes, from, to, separator);
        boolean named = isName(bytes, fields.start(0), fields.end(0));
        Columns columns = named ? Columns.named(fields.texts(), where) : Columns.unnamed(count, where);
        return new Layout(separator, named, columns);
    }

    private static byte separator(byte[] bytes, int from, int to, boolean decimalComma, String where) throws BadInput {
        if (contains(bytes, from, to, '\t')) {
            return '\t';
        }
        boolean semicolons = contains(bytes, from, to, ';');
        if (decimalComma) {
            boolean quotedCommas = !semicolons && contains(bytes, from, to, '"');
            return (byte) (quotedCommas ? ',' : ';');
        }
        if (semicolons) {
            throw new BadInput(where + " separates columns with semicolons: use --decimal-comma if its numbers are"
                    + " written 1,25, otherwise save it with commas between the columns");
        }
        return ',';
    }

    /** Whether a field is neither a number, with whatever decimal point, nor what stands in place of one. */
    private static boolean isName(byte[] bytes, int from, int to) {
        return !new Decimal('.').read(bytes, from, to)
                && !new Decimal(',').read(bytes, from, to)
                && !Special.isWord(bytes, from, to);
    }

    private static boolean contains(byte[] bytes, int from, int to, char letter) {
        for (int i = from; i < to; i++) {
            if (bytes[i] == letter) {
                return true;
            }
        }
        return false;
    }
}
