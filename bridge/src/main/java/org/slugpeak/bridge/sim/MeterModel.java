package org.slugpeak.bridge.sim;

import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.core.reading.Measurand;

/**
 * A meter as the bench sees it. All figures are invented, of the size that is usual for its kind. Immutable; any thread may use it.
 *
 * @param kind of meter
 * @param measurand what it measures
 * @param intervalNanos from reading to reading; positive
 * @param lagSeconds time constant of what it reads through; positive
 * @param stepVolts resolution of its lowest range; positive
 * @param rangeVolts end of its lowest range; the next ones are ten times greater, with ten times the step
 * @param ranges how many ranges it has; 1 for a meter that cannot change range
 * @param autorangeNanos how long it is silent when it changes range
 * @param inputOhm what it loads the detector with
 */
record MeterModel(
        SourceDescription.MeterKind kind,
        Measurand measurand,
        long intervalNanos,
        double lagSeconds,
        double stepVolts,
        double rangeVolts,
        int ranges,
        long autorangeNanos,
        double inputOhm) {

    /** Three readings a second, steps of 1 mV, silent for 0.8 s when it changes range. */
    static final MeterModel MULTIMETER = new MeterModel(
            SourceDescription.MeterKind.MULTIMETER,
            Measurand.DC_VOLTS,
            333_333_333L,
            0.1,
            1e-3,
            4,
            2,
            800_000_000L,
            10e6);

    /** A clock of its own: 49.3 readings a second, so that hum beats with it. */
    private static final long CONVERTER_NANOS = 20_300_000L;

    /** Fifty readings a second behind a divider of 10 megohm. */
    static final MeterModel CONVERTER = new MeterModel(
            SourceDescription.MeterKind.CONVERTER, Measurand.DC_VOLTS, CONVERTER_NANOS, 0.012, 1e-3, 12, 1, 0, 10e6);

    /** The same without its divider: one megohm. */
    static final MeterModel LOADING = new MeterModel(
            SourceDescription.MeterKind.LOADING_CONVERTER,
            Measurand.DC_VOLTS,
            CONVERTER_NANOS,
            0.012,
            1e-3,
            12,
            1,
            0,
            1e6);

    /** Twenty tone measurements a second at the voice coil. */
    static final MeterModel SOUND_CARD = new MeterModel(
            SourceDescription.MeterKind.SOUND_CARD, Measurand.AC_VOLTS, 50_000_000L, 0.05, 1e-5, 3, 1, 0, 1e9);
}
