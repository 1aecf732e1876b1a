package org.slugpeak.core.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;

/** Audio with an exact answer: sines, noise and whatever else is added, at one sample rate. */
final class Signal {

    private static final int HUM_LINES = 20;

    private final double rateHz;
    private final List<IntToDoubleFunction> parts = new ArrayList<>();

    private Signal(double rateHz) {
        this.rateHz = rateHz;
    }

    static Signal at(double rateHz) {
        return new Signal(rateHz);
    }

    Signal sine(double hz, double amplitude, double phase) {
        double omega = 2 * Math.PI * hz / rateHz;
        return with(i -> amplitude * Math.cos(omega * i + phase));
    }

    Signal offset(double level) {
        return with(i -> level);
    }

    Signal noise(double rms, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return with(i -> rms * gaussian(random));
    }

    /** Harmonics 1 to 20 of the mains, amplitudes falling as 1/k and together as strong as a sine of this amplitude. */
    Signal hum(double mainsHz, double amplitude, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double norm = 0;
        for (int k = 1; k <= HUM_LINES; k++) {
            norm += 1.0 / k / k;
        }
        for (int k = 1; k <= HUM_LINES; k++) {
            with(resonator(k * mainsHz, amplitude / k / Math.sqrt(norm), random.nextDouble(2 * Math.PI)));
        }
        return this;
    }

    /** A sine by recurrence, for signals of many lines: x(n + 1) = 2 cos(omega) x(n) - x(n - 1). */
    private IntToDoubleFunction resonator(double hz, double amplitude, double phase) {
        double omega = 2 * Math.PI * hz / rateHz;
        double twice = 2 * Math.cos(omega);
        double[] state = {amplitude * Math.cos(phase - omega), amplitude * Math.cos(phase)};
        return i -> {
            double now = state[1];
            state[1] = twice * now - state[0];
            state[0] = now;
            return now;
        };
    }

    Signal with(IntToDoubleFunction part) {
        parts.add(part);
        return this;
    }

    double[] seconds(double seconds) {
        double[] samples = new double[(int) Math.round(seconds * rateHz)];
        for (int i = 0; i < samples.length; i++) {
            for (IntToDoubleFunction part : parts) {
                samples[i] += part.applyAsDouble(i);
            }
        }
        return samples;
    }

    static double gaussian(SplittableRandom random) {
        double u = 1 - random.nextDouble();
        return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
