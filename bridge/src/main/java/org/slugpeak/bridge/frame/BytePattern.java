package org.slugpeak.bridge.frame;

import java.util.Locale;
import java.util.Optional;

/** What each byte of a frame must be: two hexadecimal digits a byte, where a question mark is any. Immutable. */
final class BytePattern {

    private static final String DIGITS = "0123456789ABCDEF";

    private final byte[] masks;
    private final byte[] values;

    private BytePattern(byte[] masks, byte[] values) {
        this.masks = masks;
        this.values = values;
    }

    /** Reads {@code "02 3? ?? 0D"}; empty where it is no such pattern. */
    static Optional<BytePattern> parse(String text) {
        String[] bytes = text.strip().toUpperCase(Locale.ROOT).split("\\s+", -1);
        byte[] masks = new byte[bytes.length];
        byte[] values = new byte[bytes.length];
        for (int i = 0; i < bytes.length; i++) {
            if (!bytes[i].matches("[0-9A-F?]{2}")) {
                return Optional.empty();
            }
            for (char each : bytes[i].toCharArray()) {
                masks[i] = (byte) (masks[i] << 4 | (each == '?' ? 0 : 0xF));
                values[i] = (byte) (values[i] << 4 | Math.max(0, DIGITS.indexOf(each)));
            }
        }
        return Optional.of(new BytePattern(masks, values));
    }

    int length() {
        return masks.length;
    }

    boolean fits(byte[] frame) {
        for (int i = 0; i < masks.length; i++) {
            if ((frame[i] & masks[i]) != values[i]) {
                return false;
            }
        }
        return true;
    }

    /** How many bits of a frame it leaves no choice. */
    int fixedBits() {
        int bits = 0;
        for (byte mask : masks) {
            bits += Integer.bitCount(mask & 0xFF);
        }
        return bits;
    }

    /** The frame with the bits that the pattern fixes. */
    byte[] imposedOn(byte[] frame) {
        byte[] imposed = frame.clone();
        for (int i = 0; i < masks.length; i++) {
            imposed[i] = (byte) ((frame[i] & ~masks[i]) | values[i]);
        }
        return imposed;
    }
}
