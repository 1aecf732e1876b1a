package org.slugpeak.bridge.sound;

import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.signal.AudioQuality;

/** Says how clean the tone is, when that has changed, and that it is distorted. One thread at a time. */
final class PurityNews {

    private static final double MUCH_DISTORTION = 0.10;

    /** Less than so much of it is distortion no more; in between nothing is said. */
    private static final double LITTLE_DISTORTION = 0.8 * MUCH_DISTORTION;

    private static final double SINAD_STEP_DB = 1.5;

    private double saidSinadDb = Double.NaN;
    private boolean saidDistortion;

    /** Of a tone. */
    void see(AudioQuality quality, SourceListener listener) {
        if (Double.isNaN(quality.sinadDb())) {
            return;
        }
        if (!(Math.abs(quality.sinadDb() - saidSinadDb) <= SINAD_STEP_DB)) {
            tell(quality, listener);
            saidSinadDb = quality.sinadDb();
        }
        boolean much = quality.distortion() > (saidDistortion ? LITTLE_DISTORTION : MUCH_DISTORTION);
        if (much && !saidDistortion) {
            listener.remark(at -> new Sound.Distorted(at, quality.distortion()));
        }
        saidDistortion = much;
    }

    /** Where there is a tone. */
    static void tell(AudioQuality quality, SourceListener listener) {
        if (!Double.isNaN(quality.sinadDb())) {
            listener.remark(at -> new Sound.Purity(at, quality.sinadDb(), quality.distortion(), humBelowDb(quality)));
        }
    }

    private static double humBelowDb(AudioQuality quality) {
        return quality.humFs() > 0 ? Decibels.of(quality.toneFs() / quality.humFs()) : Double.NaN;
    }
}
