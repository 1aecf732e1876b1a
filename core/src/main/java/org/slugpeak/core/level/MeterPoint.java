package org.slugpeak.core.level;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.word.Coded;
import org.slugpeak.core.word.Refused;

/**
 * Where the meter is connected, with the window in which the reading should stay. The windows are common practice, no source.
 * Immutable; any thread may use it.
 */
public enum MeterPoint implements Coded {
    /** Top of the volume control, DC. */
    DETECTOR(0.5, 1.5, Rest.OF_A_DIODE),
    /** Gain control line, DC. */
    AVC(0.5, 3, Rest.OF_A_DIODE),
    /** Voice coil or dummy load, AC. */
    VOICE_COIL(0.2, 1.0, Rest.NONE),
    /** Grid of the limiter of an FM set, DC; above the window it limits, and hides the peak. */
    LIMITER_GRID(0.5, 3, Rest.OF_A_DIODE),
    /** Electrolytic of a ratio detector, DC. */
    RATIO_DETECTOR(1, 5, Rest.OF_A_DIODE),
    /** Output of a discriminator or ratio detector, DC of either sign: what is wanted is zero, and a strong signal does no harm. */
    DISCRIMINATOR(0, Double.POSITIVE_INFINITY, Rest.NONE);

    /** Whether a reading without a signal is to be subtracted. */
    private enum Rest {
        OF_A_DIODE,
        NONE
    }

    private final double lowVolts;
    private final double highVolts;
    private final Rest rest;

    MeterPoint(double lowVolts, double highVolts, Rest rest) {
        this.lowVolts = lowVolts;
        this.highVolts = highVolts;
        this.rest = rest;
    }

    /**
     * Below this the reading is too small to work with.
     *
     * @return volts above rest, as a magnitude
     */
    public double lowVolts() {
        return lowVolts;
    }

    /**
     * Above this the set begins to hide the peak.
     *
     * @return volts above rest, as a magnitude; infinite where no level is too high
     */
    public double highVolts() {
        return highVolts;
    }

    /**
     * What a meter has to measure there.
     *
     * @return AC volts at the voice coil, DC volts elsewhere
     */
    public Measurand measurand() {
        return this == VOICE_COIL ? Measurand.AC_VOLTS : Measurand.DC_VOLTS;
    }

    /**
     * Whether decibels are doubtful there as long as nobody has read what the point shows without a signal.
     *
     * @return true behind a diode
     */
    boolean hasRest() {
        return rest == Rest.OF_A_DIODE;
    }

    @Override
    public String code() {
        return Coded.of(this);
    }

    /**
     * Finds the point that a word names.
     *
     * @param code as from {@link #code()}
     * @return the point
     * @throws Refused for any other word
     */
    public static MeterPoint ofCode(String code) throws Refused {
        return Coded.find(MeterPoint.class, code)
                .orElseThrow(() -> new Refused("'" + code + "' is none of "
                        + Arrays.stream(values()).map(MeterPoint::code).collect(Collectors.joining(", "))));
    }
}
