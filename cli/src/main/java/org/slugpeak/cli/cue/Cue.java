package org.slugpeak.cli.cue;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.slugpeak.cli.words.CuePhrase;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/**
 * What is heard of a session, live or in a file or both. Records are taken in one thread; the rest may be called from any.
 */
public final class Cue implements RecordSink, AutoCloseable {

    /** The loudest. */
    public static final int LOUDEST = 10;

    private static final double DECIBELS_PER_STEP = 3;

    private final CueMode mode;
    private final Optional<SpeakerCue> speaker;
    private final Optional<WavCue> wav;
    private final String device;
    private final Consumer<String> say;

    private int step;
    private boolean muted;

    Cue(
            CueMode mode,
            int step,
            String device,
            Optional<SpeakerCue> speaker,
            Optional<WavCue> wav,
            Consumer<String> say) {
        this.mode = mode;
        this.step = step;
        this.device = device;
        this.speaker = speaker;
        this.wav = wav;
        this.say = say;
        setVolume();
    }

    @Override
    public void take(SessionRecord record) {
        if (record instanceof SessionStart start && speaker.isPresent()) {
            warnOfLeak(start.source().toLowerCase(Locale.ROOT));
        }
        speaker.ifPresent(it -> it.take(record));
        wav.ifPresent(it -> it.take(record));
    }

    /** A card that plays the cue and records the set at once measures its own cue. */
    private void warnOfLeak(String source) {
        boolean sameCard = device.isEmpty() || source.contains(device.toLowerCase(Locale.ROOT));
        boolean soundIn = source.equals("sound") || source.startsWith("sound:");
        if (soundIn && sameCard) {
            say.accept(CuePhrase.MAY_LEAK.of());
        }
    }

    /** One step louder; sound that was off comes on again. */
    public synchronized void louder() {
        muted = false;
        step = Math.min(LOUDEST, step + 1);
        setVolume();
    }

    /** One step softer, down to silence. */
    public synchronized void softer() {
        step = Math.max(0, step - 1);
        setVolume();
    }

    /** Off, or on again as loud as before. */
    public synchronized void toggle() {
        muted = !muted;
        setVolume();
    }

    /**
     * Is silent while something is spoken, so that neither drowns the other.
     *
     * @param speaks whether it is being spoken now
     */
    public void giveWay(boolean speaks) {
        speaker.ifPresent(it -> it.giveWay(speaks));
    }

    private void setVolume() {
        double amplitude = muted ? 0 : amplitude(step);
        speaker.ifPresent(it -> it.volume(amplitude));
    }

    /** Equal steps of loudness: {@value #DECIBELS_PER_STEP} dB each, and 0 is silence. */
    static double amplitude(int step) {
        return step == 0 ? 0 : Decibels.ratio((step - LOUDEST) * DECIBELS_PER_STEP);
    }

    /**
     * The state of the sound, for the corner of the screen.
     *
     * @return a few words; empty where nothing is ever heard
     */
    public synchronized String status() {
        if (speaker.isEmpty()) {
            return "";
        }
        if (muted || step == 0) {
            return CuePhrase.OFF.of();
        }
        return speaker.get().isAudible() ? CuePhrase.ON.of(mode.word(), step) : CuePhrase.BELL.of();
    }

    /**
     * Whether everything is in the file, where there is to be one.
     *
     * @return false where it could not be written, which has been said
     */
    public boolean isWhole() {
        return wav.map(WavCue::isWhole).orElse(true);
    }

    /** Falls silent, and closes the file if there is one. Safe to call twice. */
    @Override
    public void close() {
        speaker.ifPresent(SpeakerCue::close);
        wav.ifPresent(WavCue::close);
    }
}
