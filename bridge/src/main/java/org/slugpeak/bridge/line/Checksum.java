package org.slugpeak.bridge.line;

import java.util.Locale;

/** The checksums that instruments put behind a line of text, as hexadecimal digits. Immutable; any thread may use it. */
enum Checksum {
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

    /** As upper-case digits, with leading zeros. The text is taken as one byte a character. */
    String of(String payload) {
        int register = start;
        for (int i = 0; i < payload.length(); i++) {
            register = step(register, payload.charAt(i) & 0xFF);
        }
        return String.format(Locale.ROOT, "%0" + digits() + "X", register);
    }

    int digits() {
        return bits / BITS_PER_DIGIT;
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
