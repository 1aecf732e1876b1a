package org.slugpeak.core.receiver;

/**
 * An oscillator circuit tuned by the gang: a padder in series with gang and trimmer, the coil across both. Immutable; any
 * thread may use it.
 *
 * @param inductanceHenry of the coil; positive
 * @param padderFarad in series; positive; infinite for none
 * @param trimmerFarad across the gang section, beyond what the signal circuit has; more than minus the gang
 */
public record LocalOscillator(double inductanceHenry, double padderFarad, double trimmerFarad) {

    /**
     * Where it oscillates.
     *
     * @param signalFarad total capacitance of the signal circuit at the same setting of the gang; positive
     * @return hertz
     */
    public double frequencyHz(double signalFarad) {
        double gang = signalFarad + trimmerFarad;
        double total = Double.isInfinite(padderFarad) ? gang : gang * padderFarad / (gang + padderFarad);
        return 1 / (2 * Math.PI * Math.sqrt(inductanceHenry * total));
    }

    /**
     * The same with another trimmer setting.
     *
     * @param farad added to the present trimmer; negative takes away
     * @return the oscillator with it
     */
    public LocalOscillator withTrimmerChanged(double farad) {
        return new LocalOscillator(inductanceHenry, padderFarad, trimmerFarad + farad);
    }

    /**
     * The same with another padder setting.
     *
     * @param fraction change of the padder as a fraction; more than -1
     * @return the oscillator with it
     */
    public LocalOscillator withPadderChanged(double fraction) {
        return new LocalOscillator(inductanceHenry, padderFarad * (1 + fraction), trimmerFarad);
    }

    /**
     * Total capacitance that tunes a signal coil to a frequency.
     *
     * @param frequencyHz positive
     * @param signalHenry the signal coil; positive
     * @return farad
     */
    public static double signalFarad(double frequencyHz, double signalHenry) {
        double omega = 2 * Math.PI * frequencyHz;
        return 1 / (omega * omega * signalHenry);
    }
}
