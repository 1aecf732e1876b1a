package org.slugpeak.bridge.log;

import org.slugpeak.core.session.SessionRecord;

/**
 * What a line of a log says. Immutable; any thread may use it.
 *
 * @param record as far as the line tells
 * @param word the type of the record in the log; for advice its topic
 * @param text the sentence that was told then; empty where the log keeps none
 */
public record LogEntry(SessionRecord record, String word, String text) {}
