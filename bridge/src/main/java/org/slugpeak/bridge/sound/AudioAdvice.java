package org.slugpeak.bridge.sound;

import java.util.OptionalDouble;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.receiver.OutputPower;
import org.slugpeak.core.session.Sound;
import org.slugpeak.core.signal.AudioMeter;
import org.slugpeak.core.signal.AudioQuality;
import org.slugpeak.core.signal.ClippingCause;

/**
 * Chooses what is worth saying of the audio, and says it when it changes and at most once a second.
 */
final class AudioAdvice {

    private static final long LOOK_NANOS = 1_000_000_000L;
    private static final long FIRST_LOOK_NANOS = 400_000_000L;
    private static final double MUCH_DISTORTION = 0.10;
    private static final double SINAD_STEP_DB = 1.5;
    private static final double HUM_WORTH_SAYING_DB = 0.05;

    private final OptionalDouble ohms;
    private final OptionalDouble voltsPerFullScale;

    private boolean begun;
    private long nextLook;
    private boolean toneSaid;
    private double saidHz;
    private double saidSinadDb = Double.NaN;
    private int saidHarmonic;
    private boolean saidMaybeHum;
    private boolean saidDistortion;
    private double mark;
    private ClippingCause saidClipping = ClippingCause.NONE;

    AudioAdvice(OptionalDouble ohms, OptionalDouble voltsPerFullScale) {
        this.ohms = ohms;
        this.voltsPerFullScale = voltsPerFullScale;
    }

    void see(long tNanos, AudioMeter meter, Condition condition, SourceListener listener) {
        if (!begun) {
            begun = true;
            nextLook = tNanos + FIRST_LOOK_NANOS;
        }
        boolean due = tNanos >= nextLook;
        boolean beginsToClip = condition == Condition.CLIPPING && saidClipping == ClippingCause.NONE;
        if (!due && !beginsToClip) {
            return;
        }
        AudioQuality quality = meter.quality();
        clipping(quality, listener);
        if (due) {
            nextLook = tNanos + LOOK_NANOS;
            regular(quality, meter, listener);
        }
    }

    private void regular(AudioQuality quality, AudioMeter meter, SourceListener listener) {
        tone(quality, meter, listener);
        hum(quality, listener);
        if (quality.hasTone()) {
            purity(quality, listener);
            output(quality, listener);
        }
    }

    private void tone(AudioQuality quality, AudioMeter meter, SourceListener listener) {
        if (!quality.hasTone()) {
            if (toneSaid || saidHz == 0) {
                listener.remark(Sound.NoTone::new);
                saidHz = -1;
            }
            toneSaid = false;
            return;
        }
        if (!toneSaid || Math.abs(quality.toneHz() - saidHz) > 0.01 * saidHz) {
            double latencySeconds = meter.latencySeconds();
            double bandwidthHz = meter.noiseBandwidthHz();
            listener.remark(at -> new Sound.Tone(at, quality.toneHz(), latencySeconds, bandwidthHz));
            saidHz = quality.toneHz();
        }
        toneSaid = true;
    }

    private void hum(AudioQuality quality, SourceListener listener) {
        if (quality.maybeHum() && !saidMaybeHum) {
            listener.remark(at -> new Sound.PerhapsHum(at, quality.mainsHz()));
        }
        saidMaybeHum = quality.maybeHum();
        int harmonic = quality.humErrorDb() > HUM_WORTH_SAYING_DB ? quality.toneOnHarmonic() : 0;
        if (harmonic != 0 && harmonic != saidHarmonic) {
            listener.remark(at -> new Sound.HumUnderTone(at, harmonic, quality.mainsHz(), quality.humErrorDb()));
        }
        saidHarmonic = harmonic;
    }

    private void purity(AudioQuality quality, SourceListener listener) {
        if (Double.isNaN(quality.sinadDb())) {
            return;
        }
        if (Double.isNaN(saidSinadDb) || Math.abs(quality.sinadDb() - saidSinadDb) > SINAD_STEP_DB) {
            listener.remark(at -> new Sound.Purity(at, quality.sinadDb(), quality.distortion(), humBelowDb(quality)));
            saidSinadDb = quality.sinadDb();
        }
        boolean much = quality.distortion() > (saidDistortion ? 0.8 : 1) * MUCH_DISTORTION;
        if (much && !saidDistortion) {
            listener.remark(at -> new Sound.Distorted(at, quality.distortion()));
        }
        saidDistortion = much;
    }

    private static double humBelowDb(AudioQuality quality) {
        return quality.humFs() > 0 ? Decibels.of(quality.toneFs() / quality.humFs()) : Double.NaN;
    }

    private void output(AudioQuality quality, SourceListener listener) {
        if (ohms.isEmpty() || voltsPerFullScale.isEmpty()) {
            return;
        }
        double watts = OutputPower.watts(quality.toneFs() * voltsPerFullScale.getAsDouble(), ohms.getAsDouble());
        double reached = watts >= OutputPower.LARGE_STANDARD_WATTS
                ? OutputPower.LARGE_STANDARD_WATTS
                : watts >= OutputPower.STANDARD_WATTS ? OutputPower.STANDARD_WATTS : 0;
        if (reached > mark) {
            listener.remark(at -> new Sound.OutputReached(at, 1000 * reached, 1000 * watts));
        }
        // A quarter of a mark lost: worth saying when it is reached again.
        mark = reached >= mark || watts < 0.75 * mark ? reached : mark;
    }

    private void clipping(AudioQuality quality, SourceListener listener) {
        if (quality.clipping() != saidClipping && quality.clipping() != ClippingCause.NONE) {
            listener.remark(at -> new Sound.Clips(at, quality.clipping()));
        }
        saidClipping = quality.clipping();
    }
}
