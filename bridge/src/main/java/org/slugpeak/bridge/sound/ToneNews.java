package org.slugpeak.bridge.sound;

import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.signal.AudioQuality;

/** Says which tone is heard, when it comes, moves or goes. One thread at a time. */
final class ToneNews {

    /** A modulation oscillator creeps by less while it warms up: common practice, no source. */
    private static final double MOVED = 0.01;

    /** The tone that was said last; 0 for none yet, NaN for the word that there is none. */
    private double saidHz;

    void see(AudioQuality quality, double latencySeconds, double bandwidthHz, SourceListener listener) {
        double hz = quality.toneHz();
        if (!quality.hasTone()) {
            if (!Double.isNaN(saidHz)) {
                listener.remark(Sound.NoTone::new);
            }
            saidHz = Double.NaN;
        } else if (!(Math.abs(hz - saidHz) <= MOVED * saidHz)) {
            listener.remark(at -> new Sound.Tone(at, hz, latencySeconds, bandwidthHz));
            saidHz = hz;
        }
    }
}
