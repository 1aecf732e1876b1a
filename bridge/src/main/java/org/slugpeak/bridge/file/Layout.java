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

    /** The layout that the first line shows; the fields hold its parts afterwards. */
    static Layout of(byte[] bytes, int from, int to, boolean decimalComma, Fields fields, String where)
            throws BadInput {
        byte separator = separator(bytes, from, to, decimalComma, where);
        int count = fields.split(bytes, from, to, separator);
        boolean named = isName(bytes, fields.start(0), fields.end(0), decimalComma);
        Columns columns = named ? Columns.named(fields.texts(), where) : Columns.unnamed(count, where);
        return new Layout(separator, named, columns);
    }

    private static byte separator(byte[] bytes, int from, int to, boolean decimalComma, String where) throws BadInput {
        if (contains(bytes, from, to, '\t')) {
            return '\t';
        }
        if (decimalComma) {
            return ';';
        }
        if (contains(bytes, from, to, ';')) {
            throw new BadInput(where + " separates columns with semicolons: use --decimal-comma if its numbers are"
                    + " written 1,25, otherwise save it with commas between the columns");
        }
        return ',';
    }

    private static boolean isName(byte[] bytes, int from, int to, boolean decimalComma) {
        Decimal decimal = new Decimal(decimalComma ? ',' : '.');
        return !decimal.read(bytes, from, to) && !Special.isWord(bytes, from, to);
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
