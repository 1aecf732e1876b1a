package org.slugpeak.core.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Levels are told apart; the expected values are worked out by Ohm's law: a milliwatt in 50 ohm is the root of 0.05 volts. */
class LevelUnitTest {

    @ParameterizedTest
    @CsvSource({
        "dBm, 0, 0.4472135955",
        "dBm, -73, 1.00118e-4",
        "V EMF, 1, 1",
        "V at 50 ohm, 1, 2",
        "uV at 50 ohm, 50, 1e-4",
        "mV EMF, 3, 3e-3",
        "Vpp at 50 ohm, 1, 0.70710678",
        "Vpp EMF, 1, 0.35355339",
        "dBuV EMF, 40, 1e-4",
        "dBuV at 50 ohm, 107, 0.44774422"
    })
    void isSoManyVoltsEmf(String word, double level, double emfVolts) {
        LevelUnit unit = LevelUnit.ofWord(word).orElseThrow();
        assertEquals(emfVolts, unit.toEmfVolts(level), 1e-5 * emfVolts);
    }

    @ParameterizedTest
    @EnumSource
    void leadsThereAndBack(LevelUnit unit) {
        assertEquals(1.7e-4, unit.toEmfVolts(unit.ofEmfVolts(1.7e-4)), 1e-15);
        assertEquals(Optional.of(unit), LevelUnit.ofWord(unit.word()));
    }

    @Test
    void aVoltThatDoesNotSayWhereIsNone() {
        assertEquals(Optional.empty(), LevelUnit.ofWord("V"));
        assertEquals(Optional.empty(), LevelUnit.ofWord("DBM"));
    }

    @ParameterizedTest
    @CsvSource({"'400 Hz, 30 %', 400, 30", "'1 kHz, 30%', 1000, 30", "none, 0, 0", "CW, 0, 0"})
    void aPlansWordsOfModulationAreRead(String words, double toneHz, double depthPercent) {
        assertEquals(Optional.of(new Modulation(toneHz, depthPercent)), Modulation.of(words));
    }

    @ParameterizedTest
    @CsvSource({"'FM, 22.5 kHz'", "'400 Hz'", "'as usual'", "'400 Hz, 130 %'"})
    void otherWordsAreLeftToAPerson(String words) {
        assertEquals(Optional.empty(), Modulation.of(words));
    }
}
