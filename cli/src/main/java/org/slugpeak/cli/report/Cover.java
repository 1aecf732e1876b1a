package org.slugpeak.cli.report;

import java.time.ZoneId;
import java.util.List;

/**
 * How a report is to look, and what is known beside the logs. Immutable; any thread may use it.
 *
 * @param facts for the first page
 * @param zone in which dates are told
 * @param paper what it is printed on
 * @param large whether letters are large
 * @param changesOnly whether of two sessions only what has changed is told
 */
public record Cover(Facts facts, ZoneId zone, Paper paper, boolean large, boolean changesOnly) {

    /**
     * The same, with what the logs tell; what is known beside them counts more.
     *
     * @param stories of all sessions
     * @return a copy
     */
    public Cover with(List<SessionStory> stories) {
        Facts logged = stories.stream().map(SessionStory::facts).reduce(Facts.none(), Facts::beside);
        return new Cover(logged.with(facts), zone, paper, large, changesOnly);
    }

    /** What a page is printed on. */
    public enum Paper {
        /** As the printer has it. */
        ANY("auto"),
        /** ISO 216. */
        A4("A4"),
        /** ANSI/ASME Y14.1. */
        LETTER("letter");

        private final String css;

        Paper(String css) {
            this.css = css;
        }

        String css() {
            return css;
        }
    }
}
