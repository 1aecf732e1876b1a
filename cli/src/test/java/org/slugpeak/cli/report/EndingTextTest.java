package org.slugpeak.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.slugpeak.bridge.log.LogEnding;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.SessionEnd;

class EndingTextTest {

    @Test
    void nothingIsSaidOfALogThatWasClosed() {
        assertEquals("", EndingText.of(new LogEnding.Complete(new SessionEnd(1, 1, EndReason.Known.QUIT))));
    }

    @Test
    void itIsSaidWhereAnotherStops() {
        assertEquals(
                "the log stops after line 3 without an end record: the session was not closed; every whole line before"
                        + " that was read",
                EndingText.of(new LogEnding.Truncated(3, "")));
    }

    @Test
    void aTornLineIsShownButNotAllOfIt() {
        assertEquals(
                "the log stops within line 7 (" + "x".repeat(40)
                        + "...): the session was not closed; every whole line before that was read",
                EndingText.of(new LogEnding.Truncated(7, "x".repeat(41))));
    }
}
