package org.slugpeak.bridge.sound;

import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.signal.AudioQuality;

/** Says where hum is taken for the tone, or lies under it. One thread at a time. */
final class HumNews {

    private static final double WORTH_SAYING_DB = 0.05;

    private int saidHarmonic;
    private boolean saidMaybe;

    void see(AudioQuality quality, SourceListener listener) {
        if (quality.maybeHum() && !saidMaybe) {
            listener.remark(at -> new Sound.PerhapsHum(at, quality.mainsHz()));
        }
        saidMaybe = quality.maybeHum();
        int harmonic = quality.humErrorDb() > WORTH_SAYING_DB ? quality.toneOnHarmonic() : 0;
        if (harmonic != 0 && harmonic != saidHarmonic) {
            listener.remark(at -> new Sound.HumUnderTone(at, harmonic, quality.mainsHz(), quality.humErrorDb()));
        }
        saidHarmonic = harmonic;
    }
}
