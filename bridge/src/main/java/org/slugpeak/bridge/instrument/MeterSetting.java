package org.slugpeak.bridge.instrument;

import java.util.OptionalDouble;
import org.slugpeak.core.reading.Measurand;

/**
 * What the user wants a meter to be set to. Immutable; any thread may use it.
 *
 * @param function what to measure
 * @param rangeVolts the fixed range, positive; empty lets the meter choose
 */
public record MeterSetting(Function function, OptionalDouble rangeVolts) {

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
}
