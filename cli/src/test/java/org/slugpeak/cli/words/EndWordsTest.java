package org.slugpeak.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.core.session.EndReason;

class EndWordsTest {

    /** So that who reads English reads the same on a screen and in a log. */
    @ParameterizedTest
    @EnumSource
    void inEnglishAPersonReadsWhatALogKeeps(EndReason.Known reason) {
        assertEquals(reason.code(), EndWords.of(reason));
    }

    @Test
    void whatAnotherProgramWroteIsShownAsItIs() {
        assertEquals("lunch", EndWords.of(new EndReason.Recorded("lunch")));
    }
}
