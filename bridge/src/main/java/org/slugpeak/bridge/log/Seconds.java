package org.slugpeak.bridge.log;

/**
 * Nanoseconds written as decimal seconds, every nanosecond kept, without trailing zeros but always with a fraction:
 * {@code 0.0}, {@code 1.25}, {@code 0.000000001}.
 */
final class Seconds {

    /** Sign, ten digits, point, nine digits. */
    static final int LONGEST = 21;

    private static final long NANOS_PER_SECOND = 1_000_000_000;
    private static final int FRACTION_DIGITS = 9;

    private Seconds() {}

    /**
     * Writes to the end of the given letters.
     *
     * @param nanos any but the most negative long
     * @param letters at least {@link #LONGEST}
     * @return index of the first letter written
     */
    static int write(long nanos, char[] letters) {
        long magnitude = Math.abs(nanos);
        int at = writeFraction(magnitude % NANOS_PER_SECOND, letters);
        letters[--at] = '.';
        long whole = magnitude / NANOS_PER_SECOND;
        do {
            letters[--at] = (char) ('0' + whole % 10);
            whole /= 10;
        } while (whole != 0);
        if (nanos < 0) {
            letters[--at] = '-';
        }
        return at;
    }

    private static int writeFraction(long fraction, char[] letters) {
        long rest = fraction;
        int places = FRACTION_DIGITS;
        while (places > 1 && rest % 10 == 0) {
            rest /= 10;
            places--;
        }
        int at = letters.length;
        for (int i = 0; i < places; i++) {
            letters[--at] = (char) ('0' + rest % 10);
            rest /= 10;
        }
        return at;
    }
}
