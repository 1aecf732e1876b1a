package org.slugpeak.bridge.line;

import java.nio.charset.StandardCharsets;

/**
 * What must be said to an instrument that prints lines. Immutable; any thread may use it.
 *
 * @param greeting sent when the link is opened, and again until a start line has come where one is expected; may be empty
 * @param question sent for each reading; empty where the instrument talks by itself
 * @param intervalNanos the least time from a reading to the next question
 * @param lineEnd ends what is sent
 */
record Asking(String greeting, String question, long intervalNanos, String lineEnd) {

    byte[] bytes(String text) {
        return (text + lineEnd).getBytes(StandardCharsets.ISO_8859_1);
    }
}
