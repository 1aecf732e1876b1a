package org.slugpeak.bridge.log;

import com.fasterxml.jackson.core.io.NumberOutput;

/** The digits of a number that changes seldom. One thread at a time. */
final class Repeated {

    private long bits;
    private char[] digits = {'0', '.', '0'};

    /** The digits of a finite number, as the generator itself would write them; not to be changed. */
    char[] digits(double value) {
        long newBits = Double.doubleToRawLongBits(value);
        if (newBits != bits) {
            bits = newBits;
            digits = NumberOutput.toString(value, true).toCharArray();
        }
        return digits;
    }
}
