package org.slugpeak.core.signal;

import com.sun.management.ThreadMXBean;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * How fast audio is measured, on one thread and by its processor time, beside the plain alternative in the same run: one FFT
 * (Commons Math, in place) over the response for each reading, which gives neither hum nor distortion nor a sub-bin
 * frequency. Run by hand: {@code mvn -P bench -pl core -DskipTests -Djacoco.skip verify}.
 */
final class SpeedBench {

    private static final double RATE_HZ = 48_000;
    private static final double SECONDS = 20;
    private static final int ROUNDS = 8;
    private static final int BLOCK = 480;
    private static final int RESPONSE = 4800;
    private static final int INTERVAL = 960;
    private static final int FFT_SIZE = 8192;

    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private final double[][] transform = new double[2][FFT_SIZE];
    private final PrintStream out;
    private double sink;

    private SpeedBench(PrintStream out) {
        this.out = out;
    }

    public static void main(String[] arguments) {
        SpeedBench bench = new SpeedBench(System.out);
        bench.compare("tone and hiss", Signal.at(RATE_HZ).sine(412, 0.1, 0).noise(0.01, 1));
        bench.compare(
                "tone, hiss and 20 lines of hum",
                Signal.at(RATE_HZ).sine(412, 0.1, 0).noise(0.01, 1).hum(50, 0.05, 2));
        bench.compare("hiss alone", Signal.at(RATE_HZ).noise(0.01, 1));
    }

    private void compare(String name, Signal signal) {
        double[] samples = signal.seconds(SECONDS);
        AudioMeter meter =
                new AudioMeter(RATE_HZ, MeterSettings.defaults(), (frame, level, condition) -> sink += level);
        double meterRate = 0;
        double fftRate = 0;
        long allocated = 0;
        for (int round = 0; round < ROUNDS; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            meterRate = timesRealTime(() -> feed(meter, samples));
            allocated = threads.getCurrentThreadAllocatedBytes() - before;
            fftRate = timesRealTime(() -> transformAll(samples));
        }
        out.printf(
                Locale.ROOT,
                "%-32s meter %4.0f x real time, FFT of the response per reading %4.0f x, %d bytes allocated in %.0f s%n",
                name,
                meterRate,
                fftRate,
                allocated,
                SECONDS);
    }

    private double timesRealTime(Runnable work) {
        long before = threads.getCurrentThreadCpuTime();
        work.run();
        return SECONDS * 1e9 / (threads.getCurrentThreadCpuTime() - before);
    }

    private static void feed(AudioMeter meter, double[] samples) {
        for (int i = 0; i < samples.length; i += BLOCK) {
            meter.take(samples, i, i + BLOCK);
        }
    }

    private void transformAll(double[] samples) {
        for (int i = 0; i + RESPONSE <= samples.length; i += INTERVAL) {
            System.arraycopy(samples, i, transform[0], 0, RESPONSE);
            Arrays.fill(transform[0], RESPONSE, FFT_SIZE, 0);
            Arrays.fill(transform[1], 0);
            FastFourierTransformer.transformInPlace(transform, DftNormalization.STANDARD, TransformType.FORWARD);
            sink += transform[0][70];
        }
    }
}
