package org.slugpeak.bridge.instrument;

import java.util.OptionalDouble;
import org.slugpeak.core.reading.Measurand;

/**
 * What the user wants a meter to be set to; a range that is not positive is refused with an
 * {@link IllegalArgumentException}. Immutable; any thread may use it.
 *
 * @param function what to measure
 * @param rangeVolts the fixed range, positive; empty lets the meter choose
 * @param decimalComma whether the meter writes its numbers {@code 1,25}
 */
public record MeterSetting(Function function, OptionalDouble rangeVolts, boolean decimalComma) {

    public MeterSetting {
        if (rangeVolts.isPresent() && !(rangeVolts.getAsDouble() > 0 && Double.isFinite(rangeVolts.getAsDouble()))) {
            throw new IllegalArgumentException("a range must be more than 0 V, not " + rangeVolts.getAsDouble());
        }
    }

    /** What a meter can be asked to measure. */
    public enum Function {
        /** DC volts: detector, AVC line, discriminator. */
        DC,
        /** AC volts, RMS: the voice coil. */
        AC;

        /**
         * As quantity and unit.
         *
         * @return volts
         */
        public Measurand measurand() {
            return this == DC ? Measurand.DC_VOLTS : Measurand.AC_VOLTS;
        }
    }

    /** DC volts, the meter chooses its range. */
    public static final MeterSetting DEFAULT = new MeterSetting(Function.DC, OptionalDouble.empty());

    /**
     * With decimal points.
     *
     * @param function what to measure
     * @param rangeVolts the fixed range, positive; empty lets the meter choose
     */
    public MeterSetting(Function function, OptionalDouble rangeVolts) {
        this(function, rangeVolts, false);
    }
}
