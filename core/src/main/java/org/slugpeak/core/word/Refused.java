package org.slugpeak.core.word;

/**
 * What came from outside, from a person or a file, cannot be worked with; no fault of the caller, who must say it on. Immutable.
 */
public final class Refused extends Exception {

    private static final long serialVersionUID = 1L;

    private final String reason;

    /**
     * With a message only.
     *
     * @param reason for the user, one line: what was seen and what to do
     */
    public Refused(String reason) {
        super(reason);
        this.reason = reason;
    }

    /**
     * With a cause, for the log file.
     *
     * @param reason for the user, one line: what was seen and what to do
     * @param cause what a library said
     */
    public Refused(String reason, Throwable cause) {
        super(reason, cause);
        this.reason = reason;
    }

    /**
     * What to tell the user.
     *
     * @return one line
     */
    public String reason() {
        return reason;
    }
}
