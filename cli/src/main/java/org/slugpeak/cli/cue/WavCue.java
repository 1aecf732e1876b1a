package org.slugpeak.cli.cue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.slugpeak.cli.words.CuePhrase;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * Renders the cues of a session into a WAV file, clocked by the times of the records: a replay of an hour takes seconds and
 * sounds like the hour. One thread at a time.
 */
final class WavCue implements RecordSink, AutoCloseable {

    static final int FRAMES_PER_SECOND = 48_000;

    /** Longer pauses between two records are cut to this. */
    static final long LONGEST_PAUSE_NANOS = 10_000_000_000L;

    private static final int BLOCK_FRAMES = 480;
    private static final long TAIL_NANOS = 1_500_000_000L;
    private static final double VOLUME = 0.7;

    private final Path path;
    private final WavFile file;
    private final Consumer<String> say;
    private final Synth synth = new Synth(FRAMES_PER_SECOND);
    private final Conductor conductor;
    private final float[] block = new float[BLOCK_FRAMES];

    private long lastNanos;
    private long soundNanos;
    private boolean broken;

    WavCue(Path path, CueMode mode, Consumer<String> say) throws IOException {
        this.path = path;
        this.say = say;
        file = new WavFile(path, FRAMES_PER_SECOND);
        synth.volume(VOLUME);
        conductor = new Conductor(mode, new Direct());
    }

    @Override
    public void take(SessionRecord record) {
        long pause = Math.max(0, record.tNanos() - lastNanos);
        lastNanos = Math.max(lastNanos, record.tNanos());
        renderFor(Math.min(pause, LONGEST_PAUSE_NANOS));
        conductor.take(record);
    }

    private void renderFor(long nanos) {
        soundNanos += nanos;
        long goal = Math.round(soundNanos * 1e-9 * FRAMES_PER_SECOND);
        while (!broken && synth.frames() < goal) {
            int count = (int) Math.min(BLOCK_FRAMES, goal - synth.frames());
            synth.render(block, count);
            write(count);
        }
    }

    private void write(int count) {
        try {
            file.write(block, count);
            if (file.isFull()) {
                stop(CuePhrase.TOO_LARGE.of(path));
            }
        } catch (IOException failed) {
            stop(CuePhrase.NOT_WRITTEN.of(path, String.valueOf(failed.getMessage())));
        }
    }

    private void stop(String why) {
        if (!broken) {
            say.accept(why);
        }
        broken = true;
    }

    boolean isWhole() {
        return !broken;
    }

    @Override
    public void close() {
        synth.aim(Aim.SILENCE);
        renderFor(TAIL_NANOS);
        try {
            file.close();
        } catch (IOException failed) {
            stop(CuePhrase.NOT_CLOSED.of(path, String.valueOf(failed.getMessage())));
        }
    }

    private final class Direct implements CueTarget {

        @Override
        public void aim(Aim aim) {
            synth.aim(aim);
        }

        @Override
        public void play(Event event) {
            synth.play(event);
        }

        @Override
        public void say(String words) {
            // Words go to the screen by another way; a WAV file has none.
        }
    }
}
