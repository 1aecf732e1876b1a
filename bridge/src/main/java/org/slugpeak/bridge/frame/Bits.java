package org.slugpeak.bridge.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place in a frame, written as bytes or bits of bytes, the most significant first: {@code 6} is byte 6, {@code 1.3} its
 * bit 3, {@code 1.0-2 2.0-3} three bits of byte 1 followed by four of byte 2. Bytes and bits count from 0. Immutable.
 *
 * @param parts in order
 */
record Bits(List<Part> parts) {

    private static final Pattern PART = Pattern.compile("(\\d{1,3})(?:\\.([0-7])(?:-([0-7]))?)?");
    private static final int MOST_PARTS = 4;
    private static final int BITS_PER_DIGIT = 4;

    /** Some bits of one byte, which follow each other. */
    private record Part(int index, int low, int width) {}

    /** Reads a place; empty where it is none of a frame of that length. */
    static Optional<Bits> parse(String text, int length) {
        List<Part> parts = new ArrayList<>();
        for (String word : text.strip().split("\\s+", -1)) {
            Matcher form = PART.matcher(word);
            if (!form.matches() || Integer.parseInt(form.group(1)) >= length) {
                return Optional.empty();
            }
            int low = form.group(2) == null ? 0 : Integer.parseInt(form.group(2));
            int high = form.group(2) == null ? Byte.SIZE - 1 : low;
            high = form.group(3) == null ? high : Integer.parseInt(form.group(3));
            if (high < low) {
                return Optional.empty();
            }
            parts.add(new Part(Integer.parseInt(form.group(1)), low, high - low + 1));
        }
        return parts.size() > MOST_PARTS ? Optional.empty() : Optional.of(new Bits(List.copyOf(parts)));
    }

    /** What stands there. */
    int of(byte[] frame) {
        int value = 0;
        for (Part part : parts) {
            int bits = ((frame[part.index] & 0xFF) >> part.low) & ((1 << part.width) - 1);
            value = (value << part.width) | bits;
        }
        return value;
    }

    /** How many hexadecimal digits it takes. */
    int digits() {
        int bits = parts.stream().mapToInt(Part::width).sum();
        return (bits + BITS_PER_DIGIT - 1) / BITS_PER_DIGIT;
    }
}
