package org.slugpeak.bridge.sound;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.signal.AudioMeter;
import org.slugpeak.core.signal.AudioQuality;

/**
 * Looks what is worth saying of the audio: at most once a second, and at once where something begins to clip. One thread at a time.
 */
final class AudioAdvice {

    private static final long LOOK_NANOS = 1_000_000_000L;
    private static final long PURITY_NANOS = 200_000_000L;
    private static final long FIRST_LOOK_NANOS = 400_000_000L;

    private final ToneNews tone = new ToneNews();
    private final HumNews hum = new HumNews();
    private final PurityNews purity = new PurityNews();
    private final ClippingNews clipping = new ClippingNews();
    private final Optional<OutputNews> output;
    private final boolean everyPurity;
    private OptionalLong nextLook = OptionalLong.empty();
    private long purityNanos = Long.MIN_VALUE / 2;

    /** {@code everyPurity}: how clean the tone is is told of every fifth of a second, of which it is taken. */
    AudioAdvice(OptionalDouble ohms, OptionalDouble voltsPerFullScale, boolean everyPurity) {
        this.everyPurity = everyPurity;
        this.output = ohms.isPresent() && voltsPerFullScale.isPresent()
                ? Optional.of(new OutputNews(ohms.getAsDouble(), voltsPerFullScale.getAsDouble()))
                : Optional.empty();
    }

    void see(long tNanos, AudioMeter meter, Condition condition, SourceListener listener) {
        long dueNanos = nextLook.orElse(tNanos + FIRST_LOOK_NANOS);
        nextLook = OptionalLong.of(dueNanos);
        boolean due = tNanos >= dueNanos;
        if (everyPurity && tNanos - purityNanos >= PURITY_NANOS) {
            purityNanos = tNanos;
            PurityNews.tell(meter.quality(), listener);
        }
        if (!due && !(condition == Condition.CLIPPING && clipping.isNew())) {
            return;
        }
        AudioQuality quality = meter.quality();
        clipping.see(quality.clipping(), listener);
        if (due) {
            nextLook = OptionalLong.of(tNanos + LOOK_NANOS);
            regular(quality, meter, listener);
        }
    }

    private void regular(AudioQuality quality, AudioMeter meter, SourceListener listener) {
        tone.see(quality, meter.latencySeconds(), meter.noiseBandwidthHz(), listener);
        hum.see(quality, listener);
        if (quality.hasTone()) {
            purity.see(quality, listener);
            output.ifPresent(it -> it.see(quality, listener));
        }
    }
}
