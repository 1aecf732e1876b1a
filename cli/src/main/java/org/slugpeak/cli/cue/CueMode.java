package org.slugpeak.cli.cue;

import java.util.Locale;

/** What is heard. Immutable; any thread may use it. */
public enum CueMode {
    /** The reading against a steady tone at the best: they beat, and the beat slows and stops at the best. */
    BEAT,
    /** The reading as a tone, the best as a short ping every two seconds. */
    PITCH,
    /** Nothing. */
    OFF;

    /**
     * The word on the command line.
     *
     * @return lower case
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
