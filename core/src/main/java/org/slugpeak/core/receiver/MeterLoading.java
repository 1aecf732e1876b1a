package org.slugpeak.core.receiver;

import org.slugpeak.core.decibel.Decibels;

/**
 * What a meter's own resistance takes away from a high-resistance point. Source: Ohm's law with Thevenin's source. All
 * methods are pure; any thread may use them.
 */
public final class MeterLoading {

    private MeterLoading() {}

    /**
     * What part of the voltage the meter shows: {@code Rm / (Rm + Rs)}.
     *
     * @param sourceOhms resistance of the point, ohm, not negative
     * @param meterOhms resistance of the meter, ohm, positive
     * @return above 0, at most 1
     */
    public static double shownFraction(double sourceOhms, double meterOhms) {
        return meterOhms / (meterOhms + sourceOhms);
    }

    /**
     * The voltage without the meter.
     *
     * @param shownVolts what the meter shows, V
     * @param sourceOhms resistance of the point, ohm
     * @param meterOhms resistance of the meter, ohm
     * @return V
     */
    public static double unloadedVolts(double shownVolts, double sourceOhms, double meterOhms) {
        return shownVolts / shownFraction(sourceOhms, meterOhms);
    }

    /**
     * Error of the reading.
     *
     * @param sourceOhms resistance of the point, ohm
     * @param meterOhms resistance of the meter, ohm
     * @return dB, not positive
     */
    public static double errorDb(double sourceOhms, double meterOhms) {
        return Decibels.of(shownFraction(sourceOhms, meterOhms));
    }

    /**
     * Resistance of a moving-coil meter on one of its ranges.
     *
     * @param ohmsPerVolt sensitivity, ohm per volt
     * @param rangeVolts full scale, V
     * @return ohm
     */
    public static double movingCoilOhms(double ohmsPerVolt, double rangeVolts) {
        return ohmsPerVolt * rangeVolts;
    }
}
