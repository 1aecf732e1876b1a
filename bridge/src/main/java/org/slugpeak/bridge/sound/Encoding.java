package org.slugpeak.bridge.sound;

/** How one sample lies in its bytes; little-endian, as in WAV files and as asked of sound inputs. */
enum Encoding {
    UNSIGNED_8(1) {
        @Override
        double sample(byte[] bytes, int at) {
            return ((bytes[at] & 0xff) - 128) / 128.0;
        }
    },
    SIGNED_16(2) {
        @Override
        double sample(byte[] bytes, int at) {
            return (short) ((bytes[at] & 0xff) | (bytes[at + 1] << 8)) / 32768.0;
        }
    },
    SIGNED_24(3) {
        @Override
        double sample(byte[] bytes, int at) {
            return ((bytes[at] & 0xff) | ((bytes[at + 1] & 0xff) << 8) | (bytes[at + 2] << 16)) / 8388608.0;
        }
    },
    SIGNED_32(4) {
        @Override
        double sample(byte[] bytes, int at) {
            return int32(bytes, at) / 2147483648.0;
        }
    },
    FLOAT_32(4) {
        @Override
        double sample(byte[] bytes, int at) {
            return Float.intBitsToFloat(int32(bytes, at));
        }
    },
    FLOAT_64(8) {
        @Override
        double sample(byte[] bytes, int at) {
            return Double.longBitsToDouble((int32(bytes, at) & 0xffffffffL) | ((long) int32(bytes, at + 4) << 32));
        }
    };

    private final int bytes;

    Encoding(int bytes) {
        this.bytes = bytes;
    }

    /** The sample at an index; full scale is 1, and only the float encodings go beyond. */
    abstract double sample(byte[] bytes, int at);

    int bytes() {
        return bytes;
    }

    boolean isFloat() {
        return this == FLOAT_32 || this == FLOAT_64;
    }

    /** From which magnitude on a sample stands at the end of the scale. */
    double fullScale() {
        if (isFloat()) {
            return Double.POSITIVE_INFINITY;
        }
        return this == UNSIGNED_8 ? 1 - 1.5 / 128 : 1 - 1.5 / 32768;
    }

    private static int int32(byte[] bytes, int at) {
        return (bytes[at] & 0xff)
                | ((bytes[at + 1] & 0xff) << 8)
                | ((bytes[at + 2] & 0xff) << 16)
                | (bytes[at + 3] << 24);
    }
}
