package org.slugpeak.cli.report;

import org.slugpeak.bridge.log.LogEnding;
import org.slugpeak.cli.words.SourcePhrase;

/** Says where a log that was not closed stops. */
public final class EndingText {

    private static final int EXCERPT = 40;

    private EndingText() {}

    /** One line; empty for a log that was closed. */
    public static String of(LogEnding ending) {
        return ending.match(complete -> "", EndingText::truncated);
    }

    private static String truncated(LogEnding.Truncated it) {
        String text = it.text();
        return text.isEmpty()
                ? SourcePhrase.STOPS_AFTER.of(it.line())
                : SourcePhrase.STOPS_WITHIN.of(
                        it.line(), text.length() > EXCERPT ? text.substring(0, EXCERPT) + "..." : text);
    }
}
