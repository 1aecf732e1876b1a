package org.slugpeak.core.level;

import java.util.Locale;
import org.slugpeak.core.word.Coded;
import org.slugpeak.core.word.Refused;

/**
 * Where the meter is connected, with the window in which the reading should stay. The windows are common practice, no source.
 * Immutable; any thread may use it.
 */
public enum MeterPoint implements Coded {
    /** Top of the volume control, DC. */
    DETECTOR(0.5, 1.5),
    /** Gain control line, DC. */
    AVC(0.5, 3),
    /** Voice coil or dummy load, AC. */
    VOICE_COIL(0.2, 1.0);

    private final double lowVolts;
    private final double highVolts;

    MeterPoint(double lowVolts, double highVolts) {
        this.lowVolts = lowVolts;
        this.highVolts = highVolts;
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
     * @return volts above rest, as a magnitude
     */
    public double highVolts() {
        return highVolts;
    }

    @Override
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
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
                .orElseThrow(() -> new Refused("'" + code + "' is none of detector, avc, voice-coil"));
    }
}
