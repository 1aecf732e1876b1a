package org.slugpeak.bridge.file;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.reading.Measurand;

/**
 * A unit as people and loggers write it behind a reading. Immutable.
 *
 * @param measurand what is measured, in the unit that readings are given in
 * @param base the unit without its prefix
 * @param factor base units for one of this unit; for decibels the base units at 0 dB
 * @param decibels whether numbers in it are twenty times a logarithm
 */
record ReadingUnit(Measurand measurand, String base, double factor, boolean decibels) {

    /** 0 dBu: the voltage of 1 mW in 600 ohms (ITU-R BS.645, where it is called dBu). */
    private static final double VOLTS_AT_0_DBU = Math.sqrt(1e-3 * 600);

    private static final Map<String, ReadingUnit> ALL = all();

    static Optional<ReadingUnit> of(String written) {
        return Optional.ofNullable(ALL.get(written.toLowerCase(Locale.ROOT)));
    }

    boolean isVolts() {
        return base.equals("V");
    }

    /** From a number in this unit to one in the unit of the {@link #measurand}. */
    double reading(double number) {
        return decibels ? factor * Decibels.ratio(number) : number;
    }

    /** From a number in this unit to one in another; both have the same base. */
    double inUnitOf(ReadingUnit other, double number) {
        if (decibels || other.decibels) {
            return decibels == other.decibels ? number : reading(number) / other.factor;
        }
        return number * (factor / other.factor);
    }

    private static Map<String, ReadingUnit> all() {
        Map<String, ReadingUnit> all = new HashMap<>();
        plain(all, "voltage", "V", 1, "V", "v", "volt", "volts", "vdc", "vac", "v dc", "v ac", "v rms", "vrms");
        plain(all, "voltage", "V", 1e-3, "mV", "mv", "millivolt", "millivolts", "mvdc", "mvac", "mv dc", "mv ac");
        plain(all, "voltage", "V", 1e-6, "\u00b5V", "uv", "\u00b5v", "\u03bcv", "microvolts");
        plain(all, "voltage", "V", 1e3, "kV", "kv", "kilovolts");
        plain(all, "current", "A", 1, "A", "a", "amp", "amps", "amperes");
        plain(all, "current", "A", 1e-3, "mA", "ma", "milliamps");
        plain(all, "current", "A", 1e-6, "\u00b5A", "ua", "\u00b5a", "\u03bca", "microamps");
        plain(all, "power", "W", 1, "W", "w", "watts");
        plain(all, "power", "W", 1e-3, "mW", "mw", "milliwatts");
        plain(all, "reading", "counts", 1, "counts", "counts");
        decibels(all, "voltage", "V", 1, "dbv");
        decibels(all, "voltage", "V", VOLTS_AT_0_DBU, "dbu");
        decibels(all, "voltage", "V", 1e-3, "dbmv");
        decibels(all, "voltage", "V", 1e-6, "dbuv", "db\u00b5v", "db\u03bcv");
        decibels(all, "level", "FS", 1, "dbfs");
        decibels(all, "level, 1 at 0 dB", "", 1, "db");
        decibels(all, "level, 1 at 0 dBm", "", 1, "dbm");
        return Map.copyOf(all);
    }

    private static void plain(
            Map<String, ReadingUnit> all, String quantity, String base, double factor, String symbol, String... names) {
        for (String name : names) {
            all.put(name, new ReadingUnit(new Measurand(quantity, symbol), base, factor, false));
        }
    }

    private static void decibels(
            Map<String, ReadingUnit> all, String quantity, String base, double factor, String... names) {
        for (String name : names) {
            all.put(name, new ReadingUnit(new Measurand(quantity, base), base, factor, true));
        }
    }
}
