package org.slugpeak.core.signal;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.reading.Condition;

/**
 * Measures one channel of audio. Samples go in, in blocks of any size; levels come out at a fixed interval, the first when
 * one whole response has been heard.
 *
 * <p>The tone is read by synchronous detection in a Hann window over the response, at its own frequency, after steady hum
 * has been taken out. For a clean tone in 300..1100 Hz the level is right within 0.01 dB. In white noise its spread is 1.28
 * times the Cramer-Rao bound of the response, sqrt(2 / N) sigma (Rife and Boorstyn, IEEE Trans. IT-20, 1974): 1.22 for the
 * window and the rest for its being shorter than the response by what the filters before it take.
 *
 * <p>One thread at a time. Nothing is allocated while samples are taken.
 */
public final class AudioMeter {

    /** Lowest sample rate that can be measured, hertz. */
    public static final double LOWEST_RATE_HZ = 4000;

    /** Highest sample rate that can be measured, hertz. */
    public static final double HIGHEST_RATE_HZ = 400_000;

    /** Full scale of 16 bits and more: a converter's last code may be one short of it. */
    private static final double FULL_SCALE_16_BIT = 1 - 1.5 / 32768;

    private static final double AUDIO_RATE_HZ = 11_000;
    private static final double TONE_RATE_HZ = 2600;
    private static final double AUDIO_PASS = 0.38;
    private static final double TONE_PASS_HZ = 1150;
    private static final double SURVEY_SECONDS = 0.2;
    private static final double FORGET_SECONDS = 1.2;

    private final MeterSettings settings;
    private final AudioListener listener;
    private final double rateHz;
    private final double toneRateHz;
    private final Decimator toAudio;
    private final Decimator toTone;
    private final History full;
    private final History audio;
    private final History tone;
    private final double[] raw;
    private final double[] clean;
    private final ClipWatch clip;
    private final HumModel hum;
    private final HumUnderTone underTone;
    private final ToneTracker tracker;
    private final Purity purity;
    private final StageOverload stage = new StageOverload();
    private final double noiseBandwidthHz;
    private final int responseFrames;
    private final double framesPerLevel;
    private final int framesPerSurvey;

    private long frames;
    private long levels;
    private long nextLevel;
    private long nextSurvey;
    private long toneSeen = Long.MIN_VALUE / 2;

    /**
     * A meter that has heard nothing yet.
     *
     * @param rateHz sample rate, 4 to 400 kHz
     * @param settings what to read
     * @param listener hears the levels
     * @throws IllegalArgumentException if the sample rate is out of range
     */
    public AudioMeter(double rateHz, MeterSettings settings, AudioListener listener) {
        this(rateHz, FULL_SCALE_16_BIT, settings, listener);
    }

    /**
     * The same where full scale is not that of 16 bits.
     *
     * @param rateHz sample rate, 4 to 400 kHz
     * @param fullScale magnitude from which on a sample stands at the end of the converter's scale; infinite where there is
     *     no such end
     * @param settings what to read
     * @param listener hears the levels
     * @throws IllegalArgumentException if the sample rate is out of range
     */
    public AudioMeter(double rateHz, double fullScale, MeterSettings settings, AudioListener listener) {
        if (!(rateHz >= LOWEST_RATE_HZ && rateHz <= HIGHEST_RATE_HZ)) {
            throw new IllegalArgumentException("the sample rate must be 4 to 400 kHz, not " + rateHz + " Hz");
        }
        this.rateHz = rateHz;
        this.settings = settings;
        this.listener = listener;
        int first = Math.max(1, (int) (rateHz / AUDIO_RATE_HZ));
        double audioRateHz = rateHz / first;
        int second = Math.max(1, (int) (audioRateHz / TONE_RATE_HZ));
        this.toneRateHz = audioRateHz / second;
        this.toAudio = new Decimator(first, AUDIO_PASS);
        this.toTone = new Decimator(second, TONE_PASS_HZ / toneRateHz);
        this.responseFrames = (int) Math.round(seconds(settings.response().toNanos()) * rateHz);
        this.framesPerLevel = seconds(settings.interval().toNanos()) * rateHz;
        this.framesPerSurvey = (int) (SURVEY_SECONDS * rateHz);
        Taper taper = Taper.hann(window(audioRateHz));
        this.noiseBandwidthHz = taper.noiseBandwidthBins() * toneRateHz / taper.length();
        this.raw = new double[taper.length()];
        this.clean = new double[taper.length()];
        this.clip = new ClipWatch(rateHz, fullScale);
        this.hum = new HumModel(toneRateHz);
        this.underTone = new HumUnderTone(hum);
        this.tracker = new ToneTracker(taper, toneRateHz);
        this.purity = new Purity(rateHz, audioRateHz, AUDIO_PASS * audioRateHz);
        this.full = new History(Math.max(responseFrames, (int) (Purity.WINDOW_SECONDS * rateHz)));
        this.audio = new History((int) (Purity.WINDOW_SECONDS * audioRateHz));
        this.tone = new History(Math.max(hum.span(), taper.length()));
        this.nextLevel = responseFrames;
        this.nextSurvey = framesPerSurvey;
    }

    /**
     * Takes a block of samples.
     *
     * @param samples as a fraction of full scale, -1 to 1
     * @param from index of the first
     * @param to index after the last
     */
    public void take(double[] samples, int from, int to) {
        for (int i = from; i < to; i++) {
            take(samples[i]);
        }
    }

    /**
     * Noise bandwidth of the level: what share of white noise gets into it.
     *
     * @return hertz; for RMS half the sample rate
     */
    public double noiseBandwidthHz() {
        return switch (settings.kind()) {
            case TONE -> noiseBandwidthHz;
            case RMS -> rateHz / 2;
            case BAND -> ToneTracker.HIGHEST_HZ - ToneTracker.LOWEST_HZ;
        };
    }

    /**
     * How long ago, at the time of a level, the audio was heard that it stands for.
     *
     * @return seconds: half the response
     */
    public double latencySeconds() {
        return responseFrames / (2 * rateHz);
    }

    /**
     * How many samples were taken.
     *
     * @return not negative
     */
    public long frames() {
        return frames;
    }

    /**
     * A picture of the audio beside its level. It is made when asked for.
     *
     * @return the picture as of now
     */
    public AudioQuality quality() {
        boolean there = tracker.tracking();
        int harmonic = there ? underTone.harmonic(tracker.toneHz()) : 0;
        return new AudioQuality(
                there ? tracker.toneHz() : Double.NaN,
                there ? tracker.amplitude() : Double.NaN,
                there ? Decibels.ofPower(tracker.signalToNoise()) : Double.NaN,
                there ? purity.sinadDb() : Double.NaN,
                there ? purity.distortion() : Double.NaN,
                hum.mainsHz() > 0 ? hum.mainsHz() : Double.NaN,
                hum.totalLevel(),
                humLines(),
                harmonic,
                underTone.level(harmonic),
                tracker.hiddenByHum(),
                clipping());
    }

    private void take(double sample) {
        frames++;
        clip.take(sample);
        full.append(sample);
        if (toAudio.take(sample)) {
            audio.append(toAudio.output());
            if (toTone.take(toAudio.output())) {
                tone.append(toTone.output());
            }
        }
        if (frames >= nextLevel) {
            levels++;
            nextLevel = responseFrames + Math.round(levels * framesPerLevel);
            look();
        }
    }

    private void look() {
        if (frames >= nextSurvey) {
            nextSurvey += framesPerSurvey;
            survey();
        }
        removeHum();
        tracker.look(clean, raw, hum);
        if (tracker.tracking()) {
            toneSeen = frames;
        }
        Condition condition = condition();
        listener.level(frames, condition.hasValue() ? level() : 0, condition);
    }

    /** The slower measurements. */
    private void survey() {
        boolean recently = frames - toneSeen < FORGET_SECONDS * rateHz;
        double hidingHz = recently ? tracker.lastHz() : 0;
        hum.update(tone, hidingHz);
        underTone.see(hidingHz);
        if (tracker.tracking()) {
            purity.update(full, audio, tracker.toneHz());
            stage.see(purity.level(), purity.distortion());
        } else {
            purity.forget();
        }
    }

    private void removeHum() {
        int from = tone.from(raw.length);
        double mean = 0;
        for (int i = 0; i < raw.length; i++) {
            mean += tone.data()[from + i];
        }
        mean /= raw.length;
        for (int i = 0; i < raw.length; i++) {
            raw[i] = tone.data()[from + i] - mean;
            clean[i] = raw[i];
        }
        hum.subtract(clean, 0, clean.length, tone.total() - clean.length);
    }

    private double level() {
        return switch (settings.kind()) {
            case TONE -> tracker.amplitude();
            case RMS -> Math.sqrt(2 * meanSquare());
            case BAND -> Math.sqrt(2 * tracker.spectrum().meanSquare(ToneTracker.LOWEST_HZ, ToneTracker.HIGHEST_HZ));
        };
    }

    private double meanSquare() {
        double[] x = full.data();
        int from = full.from(responseFrames);
        double sum = 0;
        double squares = 0;
        for (int i = from; i < from + responseFrames; i++) {
            sum += x[i];
            squares += x[i] * x[i];
        }
        double mean = sum / responseFrames;
        return Math.max(0, squares / responseFrames - mean * mean);
    }

    private Condition condition() {
        if (settings.kind() == LevelKind.TONE && !tracker.tracking()) {
            return Condition.NO_VALUE;
        }
        return clipping() == ClippingCause.NONE ? Condition.OK : Condition.CLIPPING;
    }

    private ClippingCause clipping() {
        if (clip.within(responseFrames)) {
            return ClippingCause.INPUT;
        }
        return tracker.tracking() && stage.present() ? ClippingCause.SET : ClippingCause.NONE;
    }

    private List<HumLine> humLines() {
        List<HumLine> found = new ArrayList<>();
        for (int k = 1; k <= hum.lines(); k++) {
            if (hum.stands(k)) {
                found.add(new HumLine(k, k * hum.mainsHz(), hum.level(k)));
            }
        }
        return found;
    }

    /** Samples of the tone band that fit into the response beside what the filters before it need. */
    private int window(double audioRateHz) {
        double filters = toAudio.span() / rateHz + toTone.span() / audioRateHz;
        return (int) ((seconds(settings.response().toNanos()) - filters) * toneRateHz);
    }

    private static double seconds(long nanos) {
        return nanos / 1e9;
    }
}
