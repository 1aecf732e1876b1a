package org.slugpeak.core.session;

/** Takes session records, in order, in the one thread that owns the analysis. */
@FunctionalInterface
public interface RecordSink {

    /**
     * Takes one record. Must not throw for anything that is not a bug: a sink that can no longer do its work says so once
     * and lets the session go on.
     *
     * @param record the next record
     */
    void take(SessionRecord record);
}
