package org.slugpeak.core.receiver;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.slugpeak.core.word.Coded;
import org.slugpeak.core.word.Refused;

/** A fault of the set or of the bench that can be seeded. Immutable; any thread may use it. */
public enum Fault implements Coded {
    /** The generator is five times too strong and the gain control flattens the peak. */
    STRONG,
    /** The generator stands at 465 kHz, the set wants 455 kHz. */
    WRONG_IF,
    /** The short-wave oscillator trimmer stands on the image response. */
    IMAGE,
    /** The generator stands at half the frequency and its second harmonic is heard. */
    HARMONIC,
    /** A slug was left at the wrong end of its coil. */
    SLUG_END,
    /** A mica capacitor in the first IF transformer jumps. */
    MICA,
    /** The padder is open: turning it does nothing. */
    PADDER,
    /** The secondary of the second IF transformer is open. */
    SECONDARY,
    /** The meter has one megohm only and loads the detector. */
    LOADING,
    /** The IF stage feeds back upon itself. */
    REGENERATION,
    /** Mains hum stands twenty decibels under the signal. */
    HUM;

    @Override
    public String code() {
        return Coded.of(this);
    }

    /**
     * Finds the fault that a word names.
     *
     * @param code as from {@link #code()}
     * @return the fault
     * @throws Refused for any other word; the message lists the words
     */
    public static Fault ofCode(String code) throws Refused {
        String known = Arrays.stream(values()).map(Fault::code).collect(Collectors.joining(", "));
        return Coded.find(Fault.class, code)
                .orElseThrow(() -> new Refused("no fault is called '" + code + "'; there are " + known));
    }
}
