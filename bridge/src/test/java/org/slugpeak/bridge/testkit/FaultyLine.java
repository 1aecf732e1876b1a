package org.slugpeak.bridge.testkit;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** What a bad line does to bytes. Each method gives new bytes and leaves the old ones alone. Stateless. */
public final class FaultyLine {

    private FaultyLine() {}

    /**
     * Cuts into pieces of one size.
     *
     * @param bytes the message
     * @param size of a piece, positive
     * @return the pieces, the last one may be shorter
     */
    public static List<byte[]> inPiecesOf(byte[] bytes, int size) {
        List<byte[]> pieces = new ArrayList<>();
        for (int from = 0; from < bytes.length; from += size) {
            pieces.add(Arrays.copyOfRange(bytes, from, Math.min(bytes.length, from + size)));
        }
        return pieces;
    }

    /**
     * Cuts once.
     *
     * @param bytes the message
     * @param at index of the first byte of the second piece
     * @return one or two pieces
     */
    public static List<byte[]> splitAt(byte[] bytes, int at) {
        List<byte[]> pieces = new ArrayList<>();
        if (at > 0) {
            pieces.add(Arrays.copyOf(bytes, at));
        }
        if (at < bytes.length) {
            pieces.add(Arrays.copyOfRange(bytes, at, bytes.length));
        }
        return pieces;
    }

    /**
     * Turns one bit over.
     *
     * @param bytes the message
     * @param bit counted from the lowest bit of the first byte
     * @return the damaged message
     */
    public static byte[] flipping(byte[] bytes, int bit) {
        byte[] damaged = bytes.clone();
        damaged[bit / Byte.SIZE] ^= (byte) (1 << (bit % Byte.SIZE));
        return damaged;
    }

    /**
     * Loses bytes at random.
     *
     * @param bytes the message
     * @param share how many of them, 0 to 1
     * @param random seeded by the test
     * @return what is left
     */
    public static byte[] losing(byte[] bytes, double share, SplittableRandom random) {
        ByteArrayOutputStream left = new ByteArrayOutputStream();
        for (byte each : bytes) {
            if (random.nextDouble() >= share) {
                left.write(each);
            }
        }
        return left.toByteArray();
    }

    /**
     * Bytes of any value.
     *
     * @param count how many
     * @param random seeded by the test
     * @return the bytes
     */
    public static byte[] noise(int count, SplittableRandom random) {
        byte[] bytes = new byte[count];
        for (int i = 0; i < count; i++) {
            bytes[i] = (byte) random.nextInt();
        }
        return bytes;
    }
}
