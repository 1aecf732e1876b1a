package org.slugpeak.bridge.sound;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.SourceDescription;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.reading.Measurand;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.signal.AudioMeter;
import org.slugpeak.core.signal.AudioQuality;

/**
 * Audio as readings. The unit is V (RMS) where the scale of the input is known, else FS: 1 is a full-scale sine, so that
 * 20 log10 of a reading is dB FS. A reading carries the time of the last sample that it looked at; the level is that of
 * {@link #latencySeconds()} before.
 *
 * <p>One thread at a time, the caller's.
 */
public final class SoundSource implements ReadingSource {

    private final SampleCarrier carrier;
    private final SoundOptions options;
    private final OptionalDouble voltsPerFullScale;
    private final AudioAdvice advice;
    private final Inlet inlet;

    SoundSource(SampleCarrier carrier, SoundOptions options, OptionalDouble voltsPerFullScale) {
        this.carrier = carrier;
        this.options = options;
        this.voltsPerFullScale = voltsPerFullScale;
        this.advice = new AudioAdvice(options.ohms(), voltsPerFullScale, options.everyPurity());
        this.inlet = new Inlet();
    }

    @Override
    public Measurand measurand() {
        String quantity = options.meter().kind().quantity();
        if (voltsPerFullScale.isEmpty()) {
            return new Measurand(quantity, "FS");
        }
        String across = options.ohms().isPresent()
                ? String.format(
                        Locale.ROOT, " across %s ohm", plain(options.ohms().getAsDouble()))
                : "";
        return new Measurand(quantity + across, "V");
    }

    @Override
    public SourceDescription description() {
        SampleFormat format = carrier.format();
        return new SourceDescription.Audio(
                carrier.name(),
                carrier.fileSeconds(),
                format.rateHz(),
                format.channels(),
                Byte.SIZE * format.encoding().bytes(),
                format.encoding().isFloat(),
                voltsPerFullScale);
    }

    /**
     * The name of the sound input, by which its calibration is kept.
     *
     * @return empty for a file
     */
    public String device() {
        return carrier.device();
    }

    /**
     * How long ago, at the time of a reading, the audio was heard that it stands for, beside what the sound input itself
     * takes.
     *
     * @return seconds
     */
    public double latencySeconds() {
        return options.meter().response().toNanos() / 2e9;
    }

    /**
     * What is known of the audio beside its level.
     *
     * @return a picture as of now; empty before the first samples
     */
    public Optional<AudioQuality> quality() {
        return Optional.ofNullable(inlet.meter).map(AudioMeter::quality);
    }

    @Override
    public Progress poll(long waitNanos, SourceListener listener) throws BridgeException {
        inlet.listener = listener;
        Progress progress = carrier.poll(waitNanos, inlet);
        if (progress == Progress.ENDED) {
            inlet.tellNotNumbers();
        }
        return progress;
    }

    @Override
    public void close() {
        carrier.close();
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    /** Takes the carrier's samples and hands readings on. */
    private final class Inlet implements SampleSink {

        private @Nullable SourceListener listener;
        private @Nullable AudioMeter meter;
        private PcmDecoder decoder = new PcmDecoder(carrier.format(), options.channel());
        private SampleFormat format = carrier.format();
        private double[] samples = new double[0];
        private long originNanos;

        @Override
        public void begin(SampleFormat newFormat, long newOriginNanos) {
            format = newFormat;
            decoder = new PcmDecoder(newFormat, options.channel());
            originNanos = newOriginNanos;
            meter = new AudioMeter(newFormat.rateHz(), newFormat.encoding().fullScale(), options.meter(), this::level);
        }

        @Override
        public void samples(byte[] bytes, int length) {
            int frames = length / format.frameBytes();
            if (samples.length < frames) {
                samples = new double[frames];
            }
            decoder.decode(bytes, length, samples);
            meter().take(samples, 0, frames);
        }

        @Override
        public void shift(long nanos) {
            originNanos += nanos;
        }

        @Override
        public void link(long tNanos, Link.State state, LinkDetail detail) {
            listener().link(tNanos, state, detail);
        }

        @Override
        public void garbled(String where, String problem) {
            listener().garbled(where, problem);
        }

        private void level(long frame, double levelFs, Condition condition) {
            long tNanos = originNanos + Math.round(frame * 1e9 / format.rateHz());
            advice.see(tNanos, meter(), condition, listener());
            listener().reading(new Reading(tNanos, levelFs * voltsPerFullScale.orElse(1), condition));
        }

        private void tellNotNumbers() {
            if (decoder.notNumbers() > 0) {
                listener().garbled(carrier.name(), decoder.notNumbers() + " samples are no numbers, taken as 0");
            }
        }

        private AudioMeter meter() {
            return present(meter);
        }

        private SourceListener listener() {
            return present(listener);
        }

        private static <T> T present(@Nullable T value) {
            if (value == null) {
                throw new IllegalStateException("samples came before the stream began");
            }
            return value;
        }
    }
}
