package org.slugpeak.core.signal;

/** Which number of the audio is the reading. Immutable; any thread may use it. */
public enum LevelKind {
    /** The tone alone, by synchronous detection at its own frequency; hum and hiss are left out. */
    TONE("tone level"),
    /** Everything but DC: true RMS of all samples, up to half the sample rate. */
    RMS("rms level"),
    /** RMS of what lies between 300 and 1100 Hz, steady hum lines taken out. */
    BAND("band level");

    private final String quantity;

    LevelKind(String quantity) {
        this.quantity = quantity;
    }

    /**
     * The name of the quantity, for records and screens.
     *
     * @return lower case words
     */
    public String quantity() {
        return quantity;
    }
}
