package org.slugpeak.bridge.source;

/** A file or stream of readings cannot be used at all. Immutable. */
public final class BadInput extends BridgeException {

    private static final long serialVersionUID = 1L;

    /**
     * With a message only.
     *
     * @param message one line: what happened and what to do next
     */
    public BadInput(String message) {
        super(message);
    }

    /**
     * With a cause, for the log file.
     *
     * @param message one line: what happened and what to do next
     * @param cause what the system said
     */
    public BadInput(String message, Throwable cause) {
        super(message, cause);
    }
}
