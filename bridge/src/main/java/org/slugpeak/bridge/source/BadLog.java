package org.slugpeak.bridge.source;

/** A session log cannot be read or written. Immutable. */
public final class BadLog extends BridgeException {

    private static final long serialVersionUID = 1L;

    /**
     * With a message only.
     *
     * @param message one line: what happened and what to do next
     */
    public BadLog(String message) {
        super(message);
    }

    /**
     * With a cause, for the log file.
     *
     * @param message one line: what happened and what to do next
     * @param cause what the system said
     */
    public BadLog(String message, Throwable cause) {
        super(message, cause);
    }
}
