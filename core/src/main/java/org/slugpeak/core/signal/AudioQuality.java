package org.slugpeak.core.signal;

import java.util.List;
import org.slugpeak.core.decibel.Decibels;

/**
 * What is known of the audio beside its level. Immutable; any thread may use it.
 *
 * @param toneHz frequency of the tone in hertz; NaN where there is no tone
 * @param toneFs level of the tone in FS; NaN where there is no tone
 * @param snrDb tone over the noise in its own noise bandwidth, dB; NaN where there is no tone
 * @param sinadDb (S + N + D) / (N + D) from DC to half the sample rate, dB; NaN where there is no tone
 * @param distortion harmonics 2 to 6 over the fundamental, a ratio; NaN where there is no tone
 * @param mainsHz frequency of the mains as its hum tells; NaN where there is no hum to speak of
 * @param humFs level of all hum lines together, in FS; 0 where there is none
 * @param humLines the lines that stand out of the noise, rising in frequency; a line hidden by the tone is not among them
 * @param toneOnHarmonic number of the mains harmonic that the tone hides, 0 where it hides none
 * @param hiddenHumFs level of hum that may lie under the tone, in FS: as heard before the tone came, else as its neighbours
 *     suggest
 * @param maybeHum whether something like a tone was refused since it cannot be told from hum
 * @param clipping whether and where something clips
 */
public record AudioQuality(
        double toneHz,
        double toneFs,
        double snrDb,
        double sinadDb,
        double distortion,
        double mainsHz,
        double humFs,
        List<HumLine> humLines,
        int toneOnHarmonic,
        double hiddenHumFs,
        boolean maybeHum,
        ClippingCause clipping) {

    public AudioQuality {
        humLines = List.copyOf(humLines);
    }

    /**
     * Whether there is a tone.
     *
     * @return true where {@link #toneHz()} is a number
     */
    public boolean hasTone() {
        return !Double.isNaN(toneHz);
    }

    /**
     * By how much hum under the tone may falsify its level, at worst.
     *
     * @return decibels, 0 where no hum lies under the tone or none is known
     */
    public double humErrorDb() {
        return toneOnHarmonic == 0 || !hasTone() ? 0 : Decibels.of(1 + hiddenHumFs / toneFs);
    }
}
