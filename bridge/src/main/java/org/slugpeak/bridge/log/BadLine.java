package org.slugpeak.bridge.log;

/** A line that is no record; the message goes on from "the line". Immutable. */
final class BadLine extends Exception {

    private static final long serialVersionUID = 1L;

    BadLine(String message) {
        super(message, null, false, false);
    }
}
