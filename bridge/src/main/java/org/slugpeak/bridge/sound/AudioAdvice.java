package org.slugpeak.bridge.sound;

import java.util.Locale;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.receiver.OutputPower;
import org.slugpeak.core.signal.AudioMeter;
import org.slugpeak.core.signal.AudioQuality;
import org.slugpeak.core.signal.ClippingCause;
import org.slugpeak.core.signal.ModulationTone;

/**
 * Chooses what is worth saying of the audio, and says it when it changes and at most once a second: topics {@code tone},
 * {@code audio}, {@code hum}, {@code clipping}, {@code distortion} and {@code output}.
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
        clipping(tNanos, quality, listener);
        if (due) {
            nextLook = tNanos + LOOK_NANOS;
            regular(tNanos, quality, meter, listener);
        }
    }

    private void regular(long tNanos, AudioQuality quality, AudioMeter meter, SourceListener listener) {
        tone(tNanos, quality, meter, listener);
        hum(tNanos, quality, listener);
        if (quality.hasTone()) {
            purity(tNanos, quality, listener);
            output(tNanos, quality, listener);
        }
    }

    private void tone(long tNanos, AudioQuality quality, AudioMeter meter, SourceListener listener) {
        if (!quality.hasTone()) {
            if (toneSaid || saidHz == 0) {
                listener.advice(tNanos, "tone", "no tone between 300 and 1100 Hz is heard", Double.NaN);
                saidHz = -1;
            }
            toneSaid = false;
            return;
        }
        if (!toneSaid || Math.abs(quality.toneHz() - saidHz) > 0.01 * saidHz) {
            listener.advice(
                    tNanos,
                    "tone",
                    format(
                            "tone at %.1f Hz; a reading looks %.0f ms back, noise bandwidth %.0f Hz",
                            quality.toneHz(), 1000 * meter.latencySeconds(), meter.noiseBandwidthHz()),
                    quality.toneHz());
            saidHz = quality.toneHz();
        }
        toneSaid = true;
    }

    private void hum(long tNanos, AudioQuality quality, SourceListener listener) {
        if (quality.maybeHum() && !saidMaybeHum) {
            listener.advice(
                    tNanos,
                    "hum",
                    "what is heard cannot be told from hum; set the generator's modulation between two harmonics of the"
                            + " mains: " + ModulationTone.advice(quality.mainsHz()),
                    Double.NaN);
        }
        saidMaybeHum = quality.maybeHum();
        int harmonic = quality.humErrorDb() > HUM_WORTH_SAYING_DB ? quality.toneOnHarmonic() : 0;
        if (harmonic != 0 && harmonic != saidHarmonic) {
            listener.advice(
                    tNanos,
                    "hum",
                    format(
                            "the tone stands on harmonic %d of the %.0f Hz mains: hum under it may shift the reading by"
                                    + " %.2f dB; set the modulation to %s",
                            harmonic,
                            quality.mainsHz(),
                            quality.humErrorDb(),
                            ModulationTone.advice(quality.mainsHz())),
                    quality.humErrorDb());
        }
        saidHarmonic = harmonic;
    }

    private void purity(long tNanos, AudioQuality quality, SourceListener listener) {
        if (Double.isNaN(quality.sinadDb())) {
            return;
        }
        if (Double.isNaN(saidSinadDb) || Math.abs(quality.sinadDb() - saidSinadDb) > SINAD_STEP_DB) {
            listener.advice(
                    tNanos,
                    "audio",
                    format(
                            "SINAD %.1f dB, distortion %.1f %%, hum %s",
                            quality.sinadDb(), 100 * quality.distortion(), humWords(quality)),
                    quality.sinadDb());
            saidSinadDb = quality.sinadDb();
        }
        boolean much = quality.distortion() > (saidDistortion ? 0.8 : 1) * MUCH_DISTORTION;
        if (much && !saidDistortion) {
            listener.advice(
                    tNanos,
                    "distortion",
                    format(
                            "the tone is distorted by %.0f %%: halve the generator; if the reading does not halve, the"
                                    + " set was overdriven",
                            100 * quality.distortion()),
                    quality.distortion());
        }
        saidDistortion = much;
    }

    private static String humWords(AudioQuality quality) {
        return quality.humFs() > 0
                ? format("%.1f dB below the tone", Decibels.of(quality.toneFs() / quality.humFs()))
                : "not to be seen";
    }

    private void output(long tNanos, AudioQuality quality, SourceListener listener) {
        if (ohms.isEmpty() || voltsPerFullScale.isEmpty()) {
            return;
        }
        double watts = OutputPower.watts(quality.toneFs() * voltsPerFullScale.getAsDouble(), ohms.getAsDouble());
        double reached = watts >= OutputPower.LARGE_STANDARD_WATTS
                ? OutputPower.LARGE_STANDARD_WATTS
                : watts >= OutputPower.STANDARD_WATTS ? OutputPower.STANDARD_WATTS : 0;
        if (reached > mark) {
            listener.advice(
                    tNanos,
                    "output",
                    format("standard output of %.0f mW reached: %.3g mW", 1000 * reached, 1000 * watts),
                    1000 * watts);
        }
        // A quarter of a mark lost: worth saying when it is reached again.
        mark = reached >= mark || watts < 0.75 * mark ? reached : mark;
    }

    private void clipping(long tNanos, AudioQuality quality, SourceListener listener) {
        if (quality.clipping() != saidClipping && quality.clipping() != ClippingCause.NONE) {
            listener.advice(tNanos, "clipping", quality.clipping().advice(), Double.NaN);
        }
        saidClipping = quality.clipping();
    }

    private static String format(String pattern, Object... arguments) {
        return String.format(Locale.ROOT, pattern, arguments);
    }
}
