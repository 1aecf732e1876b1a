package org.slugpeak.cli.cue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.Arrays;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/** Samples, measured with the Fourier transform of Commons Math; files are read by javax.sound. */
final class Sound {

    private static final FastFourierTransformer FFT = new FastFourierTransformer(DftNormalization.STANDARD);

    private final double[] samples;
    private final double framesPerSecond;

    Sound(double[] samples, double framesPerSecond) {
        this.samples = samples.clone();
        this.framesPerSecond = framesPerSecond;
    }

    double[] samples() {
        return samples.clone();
    }

    static Sound read(Path wav) throws IOException, UnsupportedAudioFileException {
        try (AudioInputStream stream = AudioSystem.getAudioInputStream(wav.toFile())) {
            ByteBuffer bytes = ByteBuffer.wrap(stream.readAllBytes()).order(ByteOrder.LITTLE_ENDIAN);
            double[] samples = new double[bytes.remaining() / 2];
            for (int i = 0; i < samples.length; i++) {
                samples[i] = bytes.getShort() / 32767.0;
            }
            return new Sound(samples, stream.getFormat().getFrameRate());
        }
    }

    static Sound of(Synth synth, double framesPerSecond, double seconds) {
        float[] block = new float[(int) Math.round(seconds * framesPerSecond)];
        synth.render(block, block.length);
        double[] samples = new double[block.length];
        Arrays.setAll(samples, i -> block[i]);
        return new Sound(samples, framesPerSecond);
    }

    double seconds() {
        return samples.length / framesPerSecond;
    }

    Sound part(double fromSeconds, double toSeconds) {
        int from = (int) Math.round(fromSeconds * framesPerSecond);
        int to = (int) Math.round(toSeconds * framesPerSecond);
        return new Sound(Arrays.copyOfRange(samples, from, to), framesPerSecond);
    }

    double loudest() {
        return Arrays.stream(samples).map(Math::abs).max().orElse(0);
    }

    double rms() {
        return Math.sqrt(Arrays.stream(samples).map(x -> x * x).average().orElse(0));
    }

    /** Pitch of the strongest partial, Hz, between bins by a parabola through the logarithms of three of them. */
    double pitch() {
        double[] magnitude = magnitudes(samples);
        int top = strongest(magnitude, 1, magnitude.length - 1);
        double below = Math.log(magnitude[top - 1]);
        double at = Math.log(magnitude[top]);
        double above = Math.log(magnitude[top + 1]);
        double shift = 0.5 * (below - above) / (below - 2 * at + above);
        return (top + shift) * framesPerSecond / (2 * magnitude.length);
    }

    /** How often the loudness swells a second: the strongest partial of the squared samples below a limit. */
    double beatHertz(double atMost) {
        double mean = Arrays.stream(samples).map(x -> x * x).average().orElse(0);
        double[] squares = Arrays.stream(samples).map(x -> x * x - mean).toArray();
        double[] magnitude = magnitudes(squares);
        double binHertz = framesPerSecond / (2 * magnitude.length);
        return strongest(magnitude, 1, (int) (atMost / binHertz)) * binHertz;
    }

    /** The most that is found above a frequency in any stretch of 21 ms, relative to full scale, dB. */
    double highestAboveDb(double hertz) {
        int length = 1024;
        double worst = 1e-12;
        for (int from = 0; from + length <= samples.length; from += length / 4) {
            double[] magnitude = magnitudes(Arrays.copyOfRange(samples, from, from + length));
            int bin = (int) Math.ceil(hertz / framesPerSecond * length);
            double sum = Arrays.stream(magnitude, bin, magnitude.length)
                    .map(x -> x * x)
                    .sum();
            worst = Math.max(worst, Math.sqrt(sum) * 4 / length);
        }
        return 20 * Math.log10(worst);
    }

    private static int strongest(double[] magnitude, int from, int to) {
        int top = from;
        for (int bin = from; bin < to; bin++) {
            top = magnitude[bin] > magnitude[top] ? bin : top;
        }
        return top;
    }

    private static double[] magnitudes(double[] signal) {
        int length = Integer.highestOneBit(Math.max(2, signal.length * 2 - 1));
        double[] windowed = new double[length];
        for (int i = 0; i < signal.length && i < length; i++) {
            windowed[i] = signal[i] * (0.5 - 0.5 * Math.cos(2 * Math.PI * i / signal.length));
        }
        Complex[] spectrum = FFT.transform(windowed, TransformType.FORWARD);
        return Arrays.stream(spectrum, 0, length / 2).mapToDouble(Complex::abs).toArray();
    }
}
