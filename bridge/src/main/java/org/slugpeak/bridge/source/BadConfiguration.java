package org.slugpeak.bridge.source;

/** An instrument description, plan or setting is wrong. Immutable. */
public final class BadConfiguration extends BridgeException {

    private static final long serialVersionUID = 1L;

    /**
     * With a message only.
     *
     * @param message one line: what happened and what to do next
     */
    public BadConfiguration(String message) {
        super(message);
    }

    /**
     * With a cause, for the log file.
     *
     * @param message one line: what happened and what to do next
     * @param cause what the system said
     */
    public BadConfiguration(String message, Throwable cause) {
        super(message, cause);
    }
}
