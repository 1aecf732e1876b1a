package org.slugpeak.bridge.source;

/** What was wrong with something that came and is no reading. Immutable; any thread may use it. */
public enum Garble {
    /** Bytes that are no text: the speed is wrong, or the plug is loose. */
    UNREADABLE("unreadable"),
    /** The beginning or the end of a line is missing, or the line never ends. */
    TORN("torn"),
    /** A whole line of text that is not what the instrument's description says. */
    MALFORMED("malformed"),
    /** The line says of itself that it was damaged on its way. */
    CHECKSUM("checksum"),
    /** A sound message which says that the meter is set so that its number is no live reading of the voltage. */
    SET_OTHERWISE("set-otherwise"),
    /** A question was not answered, or was answered by a complaint. */
    UNANSWERED("unanswered");

    private final String code;

    Garble(String code) {
        this.code = code;
    }

    /**
     * The word used in reports.
     *
     * @return lower case, never empty
     */
    public String code() {
        return code;
    }
}
