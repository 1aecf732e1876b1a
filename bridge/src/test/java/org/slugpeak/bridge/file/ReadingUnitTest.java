package org.slugpeak.bridge.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prefixes are those of the SI; what decibels count from is named in ITU-R V.574, read from memory but for dBu. */
class ReadingUnitTest {

    private static ReadingUnit unit(String written) {
        return ReadingUnit.of(written).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "kV, V, 1e3",
        "mV, V, 1e-3",
        "uV, V, 1e-6",
        "uV, mV, 1e-3",
        "kV, mV, 1e6",
        "mA, A, 1e-3",
        "uA, A, 1e-6",
        "uA, mA, 1e-3",
        "mW, W, 1e-3"
    })
    void aNumberIsTurnedIntoTheUnitOfTheLinesBefore(String from, String into, double factor) {
        assertEquals(3 * factor, unit(from).inUnitOf(unit(into), 3), 1e-12 * factor);
        assertEquals(3 / factor, unit(into).inUnitOf(unit(from), 3), 1e-12 / factor);
    }

    @ParameterizedTest
    @CsvSource({
        "dBV, 1, V",
        "dBu, 0.774597, V",
        "dBmV, 1e-3, V",
        "dBuV, 1e-6, V",
        "dBFS, 1, FS",
        "dB, 1, ''",
        "dBm, 1, ''"
    })
    void zeroDecibelsAreWhatTheyCountFromAndTwentyMoreTenTimesThat(String written, double atZero, String into) {
        assertEquals(atZero, unit(written).reading(0), 1e-6 * atZero);
        assertEquals(10 * atZero, unit(written).reading(20), 1e-5 * atZero);
        assertEquals(into, unit(written).measurand().unit());
    }

    @ParameterizedTest
    @CsvSource({"V DC", "Vrms", "millivolts", "\u03bcV", "amps", "watts", "dBV"})
    void itIsKnownHoweverItIsWritten(String written) {
        assertEquals(ReadingUnit.of(written), ReadingUnit.of(written.toUpperCase(Locale.ROOT)));
        assertTrue(ReadingUnit.of(written).isPresent());
        assertTrue(ReadingUnit.of(written + "x").isEmpty());
    }

    /** Decibels beside volts: a line in dBV among lines in mV is the same voltage. */
    @Property(tries = 100)
    void decibelsBecomeTheVoltageThatTheyAre(@ForAll @DoubleRange(min = -80, max = 40) double decibels) {
        double volts = Math.pow(10, decibels / 20);
        assertEquals(1000 * volts, unit("dBV").inUnitOf(unit("mV"), decibels), 1e-9 * volts);
    }
}
