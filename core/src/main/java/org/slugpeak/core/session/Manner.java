package org.slugpeak.core.session;

/** How a record is said, for those who do not care what it is. Immutable; any thread may use it. */
public enum Manner {
    /** The hand must act: turn, turn back, stop. */
    VERDICT,
    /** Somebody must look now: what is read cannot be relied upon, or a person must judge. */
    ALARM,
    /** The person is to do something, and the work waits for it. */
    ASKS,
    /** What was asked for is done, or no longer wanted. */
    ANSWERS,
    /** Good to know. */
    NOTES
}
