package org.slugpeak.bridge.source;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The checksums that instruments put behind a line or into a frame. Immutable; any thread may use it. */
public enum Checksum {
    /** All bytes added, modulo 256. */
    SUM_8(8, 0, 0) {
        @Override
        int step(int register, int each) {
            return (register + each) & 0xFF;
        }
    },
    /** All bytes added, modulo 65536. */
    SUM_16(16, 0, 0) {
        @Override
        int step(int register, int each) {
            return (register + each) & 0xFFFF;
        }
    },
    /** All bytes joined by exclusive or. */
    XOR(8, 0, 0) {
        @Override
        int step(int register, int each) {
            return register ^ each;
        }
    },
    /** x^8 + x^2 + x + 1 (ITU-T I.432.1 without its final inversion), register starts at 0. */
    CRC_8(8, 0x07, 0),
    /** x^16 + x^12 + x^5 + 1 (ITU-T V.41), most significant bit first, register starts at 0xFFFF. */
    CRC_16_CCITT(16, 0x1021, 0xFFFF);

    private static final int BITS_PER_DIGIT = 4;

    private final int bits;
    private final int polynomial;
    private final int start;

    Checksum(int bits, int polynomial, int start) {
        this.bits = bits;
        this.polynomial = polynomial;
        this.start = start;
    }

    /**
     * Of a text, one byte a character.
     *
     * @param payload what is summed
     * @return upper-case hexadecimal digits, with leading zeros
     */
    public String of(String payload) {
        byte[] bytes = payload.getBytes(StandardCharsets.ISO_8859_1);
        return String.format(Locale.ROOT, "%0" + bits / BITS_PER_DIGIT + "X", of(bytes, 0, bytes.length));
    }

    /**
     * Of some bytes.
     *
     * @param bytes hold what is summed
     * @param from index of the first
     * @param to index behind the last
     * @return 0 or more, less than 65536
     */
    public int of(byte[] bytes, int from, int to) {
        int register = start;
        for (int i = from; i < to; i++) {
            register = step(register, bytes[i] & 0xFF);
        }
        return register;
    }

    int step(int register, int each) {
        int shifted = register ^ (each << (bits - Byte.SIZE));
        int top = 1 << (bits - 1);
        for (int i = 0; i < Byte.SIZE; i++) {
            shifted = (shifted & top) == 0 ? shifted << 1 : (shifted << 1) ^ polynomial;
        }
        return shifted & ((1 << bits) - 1);
    }
}
