package org.slugpeak.bridge.sound;

import java.util.Locale;

/** Which channel of the audio is measured. Immutable; any thread may use it. */
public enum Channel {
    /** The first, or the only one. */
    LEFT,
    /** The second; the only one where there is but one. */
    RIGHT,
    /** The mean of all. */
    MIX;

    /**
     * The word used on the command line and in files.
     *
     * @return lower case
     */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
