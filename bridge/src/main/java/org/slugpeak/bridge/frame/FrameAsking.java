package org.slugpeak.bridge.frame;

import java.nio.charset.StandardCharsets;

/**
 * What must be said to a meter before it sends a frame. Immutable.
 *
 * @param question sent for each frame; empty where the meter sends by itself
 * @param intervalNanos the least time from a frame to the next question
 * @param patienceNanos after so long without a frame the question is sent again
 */
record FrameAsking(String question, long intervalNanos, long patienceNanos) {

    byte[] bytes() {
        return question.getBytes(StandardCharsets.ISO_8859_1);
    }
}
