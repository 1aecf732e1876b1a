package org.slugpeak.core.figure;

import java.util.List;
import org.slugpeak.core.word.Coded;

/**
 * The figures of a receiver's sheet. Named and defined after IRE Standards on Radio Receivers: Methods of Testing
 * Amplitude-Modulation Broadcast Receivers (1948) and IEC 60315-3 (receivers for amplitude-modulated emissions), both from memory: their
 * text was not at hand, and clauses are not quoted. Immutable; any thread may use it.
 */
public enum FigureKind implements Coded {
    /** Least input that gives the standard output. */
    SENSITIVITY(Counts.VOLTS_EMF),
    /** Signal with noise over noise at that input, modulation on against off. */
    SIGNAL_TO_NOISE(Counts.DECIBELS),
    /** Input at which that ratio is 10 dB. */
    INPUT_FOR_TEN_DB(Counts.VOLTS_EMF),
    /** Input at the image over input at the signal, for the same output. */
    IMAGE_REJECTION(Counts.DECIBELS),
    /** The same at the intermediate frequency. */
    IF_REJECTION(Counts.DECIBELS),
    /** Width of the whole receiver where it takes 6 dB more input. */
    WIDTH_6_DB(Counts.HERTZ),
    /** Where it takes 20 dB more. */
    WIDTH_20_DB(Counts.HERTZ),
    /** Where it takes 40 dB more. */
    WIDTH_40_DB(Counts.HERTZ),
    /** How far the input falls from the strongest one until the output has fallen by 10 dB. */
    AVC(Counts.DECIBELS),
    /** Hum and noise below the output of the strongest input, modulation off against on. */
    HUM(Counts.DECIBELS),
    /** Root of the summed squares of harmonics 2 to 6 over the tone, at the strongest input with the volume down to the reference. */
    DISTORTION(Counts.RATIO);

    /** The widths, from the narrowest. */
    public static final List<FigureKind> WIDTHS = List.of(WIDTH_6_DB, WIDTH_20_DB, WIDTH_40_DB);

    /** What a figure counts in. */
    public enum Counts {
        /** Volts EMF of the generator, RMS. */
        VOLTS_EMF,
        /** Decibels. */
        DECIBELS,
        /** Hertz. */
        HERTZ,
        /** A ratio, told in percent. */
        RATIO
    }

    private final Counts counts;

    FigureKind(Counts counts) {
        this.counts = counts;
    }

    /**
     * What it counts in.
     *
     * @return one of four
     */
    public Counts counts() {
        return counts;
    }

    @Override
    public String code() {
        return Coded.of(this);
    }
}
