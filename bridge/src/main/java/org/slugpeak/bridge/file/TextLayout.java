package org.slugpeak.bridge.file;

/**
 * How the lines of one text are built. Immutable.
 *
 * @param shape separator and decimal point
 * @param named whether a header line names the columns
 * @param firstRow number of the first line with a reading, counted from 1
 * @param columns what they hold
 */
record TextLayout(Shape shape, boolean named, long firstRow, Columns columns) {

    /** One value a line, without a header line. */
    static TextLayout ofOneValue(CsvOptions options) {
        Shape shape = options.decimalComma() ? new Shape(Separator.SEMICOLONS, ',') : new Shape(Separator.COMMAS, '.');
        return new TextLayout(shape, false, 1, Columns.ofOneValue(options.unit().flatMap(ReadingUnit::of)));
    }

    static TextLayout of(NumberTable table, Columns columns) {
        return new TextLayout(
                table.shape(), !table.names().isEmpty(), table.lines().get(0).number(), columns);
    }
}
