package org.slugpeak.bridge.decimal;

import com.fasterxml.jackson.core.io.NumberInput;

/**
 * Reads one decimal number at a time out of bytes: optional sign, digits with at most one decimal point, optional decimal
 * exponent; nothing else, so that {@code NaN}, hexadecimal, digit grouping and units are refused. One object is used again
 * and again and allocates nothing for numbers of up to 15 digits and a decimal exponent within 22.
 *
 * <p>One thread at a time.
 */
public final class Decimal {

    /** What {@link #toNanos} gives, in place of nanoseconds, for a time that does not fit. */
    public static final long OUT_OF_RANGE = Long.MIN_VALUE;

    /** Decimal exponent that turns seconds into nanoseconds. */
    public static final int SECONDS = 9;

    // Up to here both the digits and the power of ten are doubles without error, so that one operation rounds once and
    // correctly (W. D. Clinger, "How to Read Floating Point Numbers Accurately", PLDI 1990, section 3).
    private static final long LARGEST_EXACT_INTEGER = 1L << 53;
    private static final double[] EXACT_POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };
    private static final long TENTH_OF_MAX = Long.MAX_VALUE / 10;
    private static final int LAST_DIGIT_OF_MAX = (int) (Long.MAX_VALUE % 10);
    private static final int LARGEST_POWER_OF_TEN_IN_LONG = 18;
    private static final int EXPONENT_LIMIT = 100_000;

    private final byte point;

    private byte[] text = new byte[0];
    private int start;
    private int end;
    private int at;
    private boolean negative;
    private long digits;
    private int exponent;
    private boolean allDigits;

    /**
     * A reader of decimals.
     *
     * @param point what stands before the fraction: a point or a comma
     */
    public Decimal(char point) {
        this.point = (byte) point;
    }

    /**
     * Reads a number that fills the given bytes exactly.
     *
     * @param bytes ASCII text
     * @param from index of its first byte
     * @param to index after its last byte
     * @return whether it is a decimal number; only then may the other methods be asked
     */
    public boolean read(byte[] bytes, int from, int to) {
        text = bytes;
        start = from;
        end = to;
        at = from;
        digits = 0;
        exponent = 0;
        allDigits = true;
        negative = readSign();
        int count = readDigits(0);
        if (at < end && text[at] == point) {
            at++;
            count += readDigits(1);
        }
        return count > 0 && (at == end || readExponent());
    }

    /**
     * The number as a double.
     *
     * @return in the unit of the text, the nearest double, ties to even, exactly as {@link Double#parseDouble};
     *     infinite beyond the range of doubles
     */
    public double toDouble() {
        if (allDigits && digits <= LARGEST_EXACT_INTEGER && Math.abs(exponent) < EXACT_POWERS.length) {
            double magnitude = exponent < 0 ? digits / EXACT_POWERS[-exponent] : digits * EXACT_POWERS[exponent];
            return negative ? -magnitude : magnitude;
        }
        char[] copy = new char[end - start];
        for (int i = 0; i < copy.length; i++) {
            byte letter = text[start + i];
            copy[i] = letter == point ? '.' : (char) letter;
        }
        return NumberInput.parseDouble(copy, 0, copy.length, true);
    }

    /**
     * The number as a time. A number of at most 18 digits is converted exactly and then rounded to the nearest nanosecond,
     * halves away from zero.
     *
     * @param unitExponent decimal exponent of the number's unit in nanoseconds: {@link #SECONDS}, or 6 for milliseconds
     * @return nanoseconds, or {@link #OUT_OF_RANGE} for more than 292 years
     */
    public long toNanos(int unitExponent) {
        int shift = exponent + unitExponent;
        long magnitude;
        if (digits == 0 || shift < -LARGEST_POWER_OF_TEN_IN_LONG) {
            magnitude = 0;
        } else if (shift < 0) {
            long divisor = powerOfTen(-shift);
            long rest = digits % divisor;
            magnitude = digits / divisor + (rest >= divisor - rest ? 1 : 0);
        } else if (shift > LARGEST_POWER_OF_TEN_IN_LONG || Math.multiplyHigh(digits, powerOfTen(shift)) != 0) {
            return OUT_OF_RANGE;
        } else {
            magnitude = digits * powerOfTen(shift);
        }
        return magnitude < 0 ? OUT_OF_RANGE : negative ? -magnitude : magnitude;
    }

    /**
     * Whether the number is written without point and exponent.
     *
     * @return true for a sign, if there is one, and digits
     */
    public boolean isWhole() {
        for (int i = start; i < end; i++) {
            if (!isDigit(text[i]) && text[i] != '-' && text[i] != '+') {
                return false;
            }
        }
        return true;
    }

    private boolean readSign() {
        boolean minus = at < end && text[at] == '-';
        if (minus || (at < end && text[at] == '+')) {
            at++;
        }
        return minus;
    }

    private int readDigits(int fraction) {
        int from = at;
        int i = at;
        long sum = digits;
        int dropped = 0;
        for (; i < end && isDigit(text[i]); i++) {
            int digit = text[i] - '0';
            if (allDigits && (sum < TENTH_OF_MAX || (sum == TENTH_OF_MAX && digit <= LAST_DIGIT_OF_MAX))) {
                sum = sum * 10 + digit;
            } else {
                allDigits = false;
                dropped++;
            }
        }
        at = i;
        digits = sum;
        exponent += dropped - fraction * (i - from);
        return i - from;
    }

    private boolean readExponent() {
        if (text[at] != 'e' && text[at] != 'E') {
            return false;
        }
        at++;
        boolean minus = readSign();
        int from = at;
        int size = 0;
        for (; at < end && isDigit(text[at]); at++) {
            size = Math.min(EXPONENT_LIMIT, size * 10 + text[at] - '0');
        }
        exponent += minus ? -size : size;
        return at > from && at == end;
    }

    private static boolean isDigit(byte letter) {
        return letter >= '0' && letter <= '9';
    }

    private static long powerOfTen(int power) {
        long product = 1;
        for (int i = 0; i < power; i++) {
            product *= 10;
        }
        return product;
    }
}
