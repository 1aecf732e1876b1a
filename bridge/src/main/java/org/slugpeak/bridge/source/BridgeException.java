package org.slugpeak.bridge.source;

/**
 * Something outside the program is in the way and the user can do something about it. The message is one line: what
 * happened, to which port, file or line, and what to do next. Immutable.
 */
public abstract sealed class BridgeException extends Exception
        permits PortUnavailable, PortLost, BadLog, BadInput, BadConfiguration {

    private static final long serialVersionUID = 1L;

    /**
     * With a message only.
     *
     * @param message one line: what happened and what to do next
     */
    protected BridgeException(String message) {
        super(message);
    }

    /**
     * With a cause, for the log file.
     *
     * @param message one line: what happened and what to do next
     * @param cause what the system said
     */
    protected BridgeException(String message, Throwable cause) {
        super(message, cause);
    }
}
