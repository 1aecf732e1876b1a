package org.slugpeak.bridge.source;

/** A port or device cannot be opened: it is not there, is busy, or is not ours to use. Immutable. */
public final class PortUnavailable extends BridgeException {

    private static final long serialVersionUID = 1L;

    /**
     * With a message only.
     *
     * @param message one line: what happened and what to do next
     */
    public PortUnavailable(String message) {
        super(message);
    }

    /**
     * With a cause, for the log file.
     *
     * @param message one line: what happened and what to do next
     * @param cause what the system said
     */
    public PortUnavailable(String message, Throwable cause) {
        super(message, cause);
    }
}
