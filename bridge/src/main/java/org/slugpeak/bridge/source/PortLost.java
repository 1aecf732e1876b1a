package org.slugpeak.bridge.source;

/** A port was lost and will not come back by itself. Immutable. */
public final class PortLost extends BridgeException {

    private static final long serialVersionUID = 1L;

    /**
     * With a message only.
     *
     * @param message one line: what happened and what to do next
     */
    public PortLost(String message) {
        super(message);
    }

    /**
     * With a cause, for the log file.
     *
     * @param message one line: what happened and what to do next
     * @param cause what the system said
     */
    public PortLost(String message, Throwable cause) {
        super(message, cause);
    }
}
