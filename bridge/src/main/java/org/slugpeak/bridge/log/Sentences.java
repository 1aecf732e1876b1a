package org.slugpeak.bridge.log;

import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.SessionRecord;

/**
 * Puts records into words. Version 1 of the format keeps a sentence for a person beside the figures of some records; the records
 * themselves have none. Whoever makes a log or a stream of lines says which words it gets, and where nothing is written nothing is
 * worded.
 */
@FunctionalInterface
public interface Sentences {

    /**
     * What a person is told.
     *
     * @param record of any kind
     * @return one line; empty for a kind of which nothing is said
     */
    String of(SessionRecord record);

    /**
     * The same, but for what came in words from outside: those stay as they came, so that a log that is written again says the same.
     *
     * @param record that has the detail
     * @param detail of a change of the link
     * @return one line; may be empty
     */
    default String of(SessionRecord record, LinkDetail detail) {
        return detail instanceof LinkDetail.Told told ? told.text() : of(record);
    }
}
