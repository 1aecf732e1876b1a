package org.slugpeak.core.session;

/** A record that still lacks its time, which whoever keeps the session's time gives it: {@code at -> new Request.CheckOver(at)}. */
@FunctionalInterface
public interface Untimed {

    /**
     * The record.
     *
     * @param tNanos nanoseconds from the first reading
     * @return the same whenever it is called with the same time
     */
    SessionRecord at(long tNanos);
}
