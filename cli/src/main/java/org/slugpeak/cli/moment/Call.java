package org.slugpeak.cli.moment;

/**
 * What calls for attention at the moment when it happens: it is heard, spoken, felt, or flashes, whichever way a person is told. Immutable;
 * any thread may use it.
 */
public enum Call {
    /** Past it: turn back. */
    BACK,
    /** Back at the best: stop. */
    STOP,
    /** The adjuster is recorded. */
    HELD,
    /** The reading cannot be trusted. */
    OVERLOAD,
    /** The instrument has gone, or is silent. */
    NO_LINK,
    /** The instrument is back. */
    LINK_BACK,
    /** Something must be read, or judged. */
    LOOK,
    /** The next adjuster, or the work after a check. */
    BEGIN
}
