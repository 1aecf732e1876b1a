package org.slugpeak.cli.cue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;

/**
 * A sound output of the machine, kept open with a short buffer: what is heard is never older than the buffer. Two channels of
 * 16 bits at 48 or 44.1 kHz, which is what cards offer without conversion.
 */
final class LineSpeaker implements Speaker {

    /** Delay of the line, s; the shortest that the devices tried here play without gaps. */
    private static final double BUFFER_SECONDS = 0.03;

    /** What is rendered at once, s; a new aim waits at most this long for the next block. */
    private static final double BLOCK_SECONDS = 0.005;

    private static final List<Float> RATES = List.of(48_000f, 44_100f);
    private static final int CHANNELS = 2;
    private static final int BYTES_PER_SAMPLE = 2;
    private static final int LARGEST_SAMPLE = 32767;

    private final SourceDataLine line;
    private final int framesPerSecond;
    private final byte[] bytes;

    private LineSpeaker(SourceDataLine line) {
        this.line = line;
        framesPerSecond = Math.round(line.getFormat().getSampleRate());
        bytes = new byte[blockFrames() * CHANNELS * BYTES_PER_SAMPLE];
    }

    /**
     * Opens an output.
     *
     * @param name part of its name; empty for the machine's usual one
     * @return empty if there is none, or it is taken
     */
    static Optional<Speaker> open(String name) {
        return RATES.stream()
                .map(rate -> open(name, rate))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Speaker> open(String name, float rate) {
        AudioFormat format = new AudioFormat(rate, 8 * BYTES_PER_SAMPLE, CHANNELS, true, false);
        int bufferFrames = (int) Math.round(BUFFER_SECONDS * rate);
        try {
            SourceDataLine line = line(name, format);
            line.open(format, bufferFrames * CHANNELS * BYTES_PER_SAMPLE);
            line.start();
            return Optional.of(new LineSpeaker(line));
        } catch (LineUnavailableException | IllegalArgumentException | SecurityException unavailable) {
            return Optional.empty();
        }
    }

    private static SourceDataLine line(String name, AudioFormat format) throws LineUnavailableException {
        if (name.isEmpty()) {
            return AudioSystem.getSourceDataLine(format);
        }
        DataLine.Info wanted = new DataLine.Info(SourceDataLine.class, format);
        for (Mixer.Info mixer : AudioSystem.getMixerInfo()) {
            boolean named = mixer.getName().toLowerCase(Locale.ROOT).contains(name.toLowerCase(Locale.ROOT));
            if (named && AudioSystem.getMixer(mixer).isLineSupported(wanted)) {
                return (SourceDataLine) AudioSystem.getMixer(mixer).getLine(wanted);
            }
        }
        throw new LineUnavailableException("no output is called " + name);
    }

    @Override
    public int framesPerSecond() {
        return framesPerSecond;
    }

    @Override
    public int blockFrames() {
        return (int) (BLOCK_SECONDS * framesPerSecond);
    }

    @Override
    public boolean write(float[] samples, int count) {
        int at = 0;
        for (int i = 0; i < count; i++) {
            int sample = Math.round(samples[i] * LARGEST_SAMPLE);
            for (int channel = 0; channel < CHANNELS; channel++) {
                bytes[at++] = (byte) sample;
                bytes[at++] = (byte) (sample >> 8);
            }
        }
        // A device that has been taken away takes no bytes any more and says nothing else about it.
        return line.write(bytes, 0, at) == at;
    }

    @Override
    public void close() {
        line.stop();
        line.flush();
        line.close();
    }
}
