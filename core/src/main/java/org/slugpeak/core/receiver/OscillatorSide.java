package org.slugpeak.core.receiver;

/** On which side of the signal the local oscillator runs. Immutable; any thread may use it. */
public enum OscillatorSide {
    /** Oscillator above the signal by the intermediate frequency: nearly every broadcast receiver. */
    ABOVE(+1),
    /** Oscillator below the signal: some short-wave and VHF ranges. */
    BELOW(-1);

    private final int sign;

    OscillatorSide(int sign) {
        this.sign = sign;
    }

    /**
     * The sign of the oscillator's distance from the signal.
     *
     * @return +1 above, -1 below
     */
    public int sign() {
        return sign;
    }
}
