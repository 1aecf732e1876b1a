package org.slugpeak.core.receiver;

/**
 * A signal circuit and the oscillator circuit that follows it on the same gang. The oscillator's coil lies across the padder
 * in series with (gang section + trimmer). The gang's capacitance is the whole capacitance of the signal circuit, so the
 * trimmer is what the oscillator has more than the signal circuit. Parts that are not positive are refused with an
 * {@link IllegalArgumentException} (the trimmer may be negative: less than the signal circuit has). Immutable; any thread may
 * use it.
 *
 * @param signalCoilHenry inductance of the signal circuit
 * @param oscillatorCoilHenry inductance of the oscillator circuit
 * @param padderFarad padder in series
 * @param trimmerFarad trimmer across the gang section
 */
public record TrackingCircuit(
        double signalCoilHenry, double oscillatorCoilHenry, double padderFarad, double trimmerFarad) {

    public TrackingCircuit {
        if (!(signalCoilHenry > 0 && oscillatorCoilHenry > 0 && padderFarad > 0)) {
            throw new IllegalArgumentException("coils and padder must be positive");
        }
    }

    /**
     * The parts that make tracking exact at three points, oscillator above the signal. The closed form equates the
     * coefficients of {@code (f - f1)(f - f2)(f - f3)(f + f1 + f2 + f3 + 2 IF)}. Source: Terman, Radio Engineers' Handbook,
     * 1943, section 9, superheterodyne tracking; re-derived, and checked against a numerical solution of the raw circuit.
     *
     * @param signalCoilHenry inductance of the signal circuit, positive
     * @param intermediateHz intermediate frequency, Hz, positive
     * @param points where tracking shall be exact
     * @return the circuit
     * @throws IllegalArgumentException where coil or intermediate frequency is not positive
     */
    public static TrackingCircuit exactAt(double signalCoilHenry, double intermediateHz, TrackingPoints points) {
        double f1 = points.lowHz();
        double f2 = points.middleHz();
        double f3 = points.highHz();
        double a = f1 + f2 + f3;
        double b2 = f1 * f2 + f1 * f3 + f2 * f3;
        double c3 = f1 * f2 * f3;
        double d = a + 2 * intermediateHz;
        double l2 = (b2 * d - c3) / (2 * intermediateHz);
        double m2 = l2 + intermediateHz * intermediateHz + a * d - b2;
        double n2 = (c3 * d + intermediateHz * intermediateHz * l2) / m2;
        double k = 1 / (4 * Math.PI * Math.PI * signalCoilHenry);
        double trimmer = k / l2;
        double padder = k * (1 / n2 - 1 / l2);
        double coil = (padder + trimmer) / (4 * Math.PI * Math.PI * m2 * padder * trimmer);
        return new TrackingCircuit(signalCoilHenry, coil, padder, trimmer);
    }

    /**
     * The gang's capacitance that tunes the signal circuit.
     *
     * @param signalHz Hz, positive
     * @return farad
     */
    public double gangFarad(double signalHz) {
        double omega = 2 * Math.PI * signalHz;
        return 1 / (omega * omega * signalCoilHenry);
    }

    /**
     * Where the oscillator runs at one position of the gang.
     *
     * @param gangFarad capacitance of one gang section, farad, positive
     * @return Hz
     */
    public double oscillatorHz(double gangFarad) {
        double section = gangFarad + trimmerFarad;
        double total = padderFarad * section / (padderFarad + section);
        return 1 / (2 * Math.PI * Math.sqrt(oscillatorCoilHenry * total));
    }

    /**
     * How far the oscillator runs above where it should.
     *
     * @param signalHz frequency that the signal circuit is tuned to, Hz
     * @param intermediateHz intermediate frequency, Hz
     * @return oscillator - signal - IF, Hz
     */
    public double errorHz(double signalHz, double intermediateHz) {
        return oscillatorHz(gangFarad(signalHz)) - signalHz - intermediateHz;
    }

    /**
     * The same with another trimmer.
     *
     * @param farad new value
     * @return a copy
     */
    public TrackingCircuit withTrimmer(double farad) {
        return new TrackingCircuit(signalCoilHenry, oscillatorCoilHenry, padderFarad, farad);
    }

    /**
     * The same with another padder.
     *
     * @param farad new value, positive
     * @return a copy
     */
    public TrackingCircuit withPadder(double farad) {
        return new TrackingCircuit(signalCoilHenry, oscillatorCoilHenry, farad, trimmerFarad);
    }

    /**
     * The same with another oscillator coil.
     *
     * @param henry new value, positive
     * @return a copy
     */
    public TrackingCircuit withOscillatorCoil(double henry) {
        return new TrackingCircuit(signalCoilHenry, henry, padderFarad, trimmerFarad);
    }
}
