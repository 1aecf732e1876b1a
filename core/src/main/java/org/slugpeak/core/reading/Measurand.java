package org.slugpeak.core.reading;

/**
 * What a source measures and in which unit. Immutable; any thread may use it.
 *
 * @param quantity in words, lower case, for example {@code dc voltage}, {@code tone level}, {@code reading}
 * @param unit the symbol, for example {@code V}, {@code dBFS}; empty where the source does not say
 */
public record Measurand(String quantity, String unit) {

    /** A number of unknown meaning, as it comes from standard input or a plain CSV file. */
    public static final Measurand UNKNOWN = new Measurand("reading", "");

    /** DC volts. */
    public static final Measurand DC_VOLTS = new Measurand("dc voltage", "V");

    /** AC volts, RMS. */
    public static final Measurand AC_VOLTS = new Measurand("ac voltage", "V");
}
