package org.slugpeak.bridge.frame;

import java.util.Optional;

/**
 * Seven data bits seen through an adapter that delivers eight: bit 7 is then the parity bit, and can be checked here.
 * Immutable.
 *
 * @param odd whether the number of ones is odd
 */
record ParityView(boolean odd) {

    private static final int DATA = 0x7F;

    /** The frame in seven bits; empty where bit 7 is in use and somewhere is not the parity. */
    Optional<byte[]> data(byte[] frame) {
        boolean used = false;
        boolean right = true;
        byte[] data = new byte[frame.length];
        for (int i = 0; i < frame.length; i++) {
            used |= frame[i] < 0;
            right &= (Integer.bitCount(frame[i] & 0xFF) % 2 == 1) == odd;
            data[i] = (byte) (frame[i] & DATA);
        }
        return used && !right ? Optional.empty() : Optional.of(data);
    }
}
