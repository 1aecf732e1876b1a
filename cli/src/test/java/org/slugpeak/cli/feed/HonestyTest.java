package org.slugpeak.cli.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.decibel.Decibels;

class HonestyTest {

    private static Optional<String> judged(boolean lawKnown, double saidDb, double readDb) {
        Honesty honesty = new Honesty();
        if (lawKnown) {
            honesty.lawIsKnown();
        }
        honesty.says(Decibels.ratio(saidDb));
        return honesty.judge(readDb);
    }

    @ParameterizedTest(name = "law known {0}: said {1}, read {2}")
    @CsvSource({
        "false, -6, -6",
        "false, -6, -12",
        "false, -6, -2",
        "false, 12, 22",
        "true, -6, -6.4",
        "true, -6, -4.6",
        "true, 12, 13.4"
    })
    void whatADetectorOrItsGainControlMayMakeOfATurnIsBelieved(boolean lawKnown, double saidDb, double readDb) {
        assertEquals(Optional.empty(), judged(lawKnown, saidDb, readDb));
    }

    @ParameterizedTest(name = "law known {0}: said {1}, read {2}")
    @CsvSource({
        "false, -6, 0",
        "false, -6, -1",
        "false, -6, -14",
        "false, -6, 6",
        "false, 12, 26",
        "true, -6, -12",
        "true, -6, -3",
        "true, -6, 6",
        "true, 12, 9"
    })
    void whatNeitherCanMakeOfItIsToldWithBothFigures(boolean lawKnown, double saidDb, double readDb) {
        String told = judged(lawKnown, saidDb, readDb).orElseThrow();
        assertTrue(told.contains(String.valueOf(Math.round(saidDb))), told);
        assertTrue(told.contains(String.valueOf(Math.round(readDb))), told);
    }

    @Test
    void aTurnIsJudgedOnceAndWhatNobodySaidIsNot() {
        Honesty honesty = new Honesty();
        assertEquals(Optional.empty(), honesty.judge(-20));
        honesty.says(0.5);
        assertTrue(honesty.judge(0).isPresent());
        assertEquals(Optional.empty(), honesty.judge(0));
    }
}
