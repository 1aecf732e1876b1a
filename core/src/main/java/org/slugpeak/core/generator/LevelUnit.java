package org.slugpeak.core.generator;

import java.util.Arrays;
import java.util.Optional;
import org.slugpeak.core.decibel.Decibels;

/**
 * What a generator's level counts in. The one place where levels are converted: inside everything is volts EMF, RMS, which is what
 * stands at the open terminals of a source of 50 ohm; a load of 50 ohm takes half of it. So 0 dBm, a milliwatt in 50 ohm, is
 * {@code sqrt(0.001 * 50)} = 0.2236 V there and 0.4472 V EMF (Ohm's law). A sine of V RMS is {@code V * 2 sqrt(2)} from peak to peak.
 * Immutable; any thread may use it.
 */
public enum LevelUnit {
    /** Volts EMF. */
    VOLTS_EMF("V EMF", 1, false),
    /** Millivolts EMF. */
    MILLIVOLTS_EMF("mV EMF", 1e-3, false),
    /** Microvolts EMF. */
    MICROVOLTS_EMF("uV EMF", 1e-6, false),
    /** Volts across a load of 50 ohm. */
    VOLTS_AT_50_OHM("V at 50 ohm", 2, false),
    /** Millivolts across a load of 50 ohm. */
    MILLIVOLTS_AT_50_OHM("mV at 50 ohm", 2e-3, false),
    /** Microvolts across a load of 50 ohm. */
    MICROVOLTS_AT_50_OHM("uV at 50 ohm", 2e-6, false),
    /** Volts from peak to peak, EMF. */
    VOLTS_PEAK_TO_PEAK_EMF("Vpp EMF", 1 / (2 * Math.sqrt(2)), false),
    /** Volts from peak to peak across a load of 50 ohm. */
    VOLTS_PEAK_TO_PEAK_AT_50_OHM("Vpp at 50 ohm", 1 / Math.sqrt(2), false),
    /** Decibels over a milliwatt in 50 ohm. */
    DBM("dBm", 2 * Math.sqrt(1e-3 * 50), true),
    /** Decibels over a microvolt EMF. */
    DECIBELS_OVER_A_MICROVOLT_EMF("dBuV EMF", 1e-6, true),
    /** Decibels over a microvolt across a load of 50 ohm. */
    DECIBELS_OVER_A_MICROVOLT_AT_50_OHM("dBuV at 50 ohm", 2e-6, true);

    private final String word;
    private final double unitEmfVolts;
    private final boolean inDecibels;

    LevelUnit(String word, double unitEmfVolts, boolean inDecibels) {
        this.word = word;
        this.unitEmfVolts = unitEmfVolts;
        this.inDecibels = inDecibels;
    }

    /**
     * As it is written, for example {@code V at 50 ohm}.
     *
     * @return the word
     */
    public String word() {
        return word;
    }

    /**
     * Finds a unit; capitals count, since {@code mV} and {@code MV} are not the same.
     *
     * @param word as from {@link #word()}
     * @return empty where there is none
     */
    public static Optional<LevelUnit> ofWord(String word) {
        return Arrays.stream(values()).filter(each -> each.word.equals(word)).findFirst();
    }

    /**
     * A level in volts EMF.
     *
     * @param level in this unit; where it is no decibel, not negative
     * @return volts EMF, RMS
     */
    public double toEmfVolts(double level) {
        return unitEmfVolts * (inDecibels ? Decibels.ratio(level) : level);
    }

    /**
     * A level in this unit.
     *
     * @param emfVolts volts EMF, RMS; positive
     * @return in this unit
     */
    public double ofEmfVolts(double emfVolts) {
        double ratio = emfVolts / unitEmfVolts;
        return inDecibels ? Decibels.of(ratio) : ratio;
    }
}
