package org.slugpeak.core.receiver;

/**
 * Aerial circuit and oscillator of a set with medium and short wave. The gang is known by the dial: at a dial frequency it
 * has the capacitance that tunes the signal coil there. Immutable; any thread may use it.
 *
 * @param signalHenry medium-wave signal coil; positive
 * @param aerialQ quality factor of the aerial circuit; positive
 * @param aerialGain ratio of voltages from aerial socket to converter grid at resonance; positive
 * @param oscillator medium wave, aligned
 * @param shortWaveFarad total capacitance of the short-wave oscillator circuit at the high end; positive
 * @param trimmerFaradPerTurn of all trimmers; positive
 * @param padderFractionPerTurn of the padder; positive
 * @param drift of the oscillator while warming up, at 1 MHz
 */
public record FrontEnd(
        double signalHenry,
        double aerialQ,
        double aerialGain,
        LocalOscillator oscillator,
        double shortWaveFarad,
        double trimmerFaradPerTurn,
        double padderFractionPerTurn,
        WarmUp drift) {

    /** Where medium wave ends and short wave begins. */
    private static final double SHORT_WAVE_HZ = 3e6;

    /**
     * Where the oscillator oscillates.
     *
     * @param dialHz where the pointer stands
     * @param trimmerTurns medium-wave oscillator trimmer, from its working position; positive is more capacitance
     * @param padderTurns from its working position; positive is more capacitance
     * @param shortWaveTurns short-wave oscillator trimmer, likewise
     * @param intermediateHz the IF that the short-wave range is made for
     * @return hertz
     */
    public double oscillatorHz(
            double dialHz, double trimmerTurns, double padderTurns, double shortWaveTurns, double intermediateHz) {
        if (dialHz > SHORT_WAVE_HZ) {
            double added = shortWaveTurns * trimmerFaradPerTurn / shortWaveFarad;
            return (dialHz + intermediateHz) / Math.sqrt(1 + added);
        }
        return oscillator
                .withTrimmerChanged(trimmerTurns * trimmerFaradPerTurn)
                .withPadderChanged(padderTurns * padderFractionPerTurn)
                .frequencyHz(LocalOscillator.signalFarad(dialHz, signalHenry));
    }

    /**
     * Voltage from aerial socket to converter grid.
     *
     * @param frequencyHz of the signal
     * @param dialHz where the pointer stands
     * @param trimmerTurns aerial trimmer, from its working position; positive is more capacitance
     * @return factor, 0 or more
     */
    public double aerialResponse(double frequencyHz, double dialHz, double trimmerTurns) {
        double tuned = LocalOscillator.signalFarad(dialHz, signalHenry);
        double added = dialHz > SHORT_WAVE_HZ ? 0 : trimmerTurns * trimmerFaradPerTurn / tuned;
        SingleTuned circuit = new SingleTuned(dialHz / Math.sqrt(1 + added), aerialQ);
        return aerialGain * circuit.response(frequencyHz).abs();
    }
}
