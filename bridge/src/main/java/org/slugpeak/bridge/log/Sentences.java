package org.slugpeak.bridge.log;

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
}
