package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A reading that goes up and down by itself turns nobody round again and again; what it does once cannot be told from a hand. */
class DisturbedRestTest {

    private static final double RATE = 50;
    private static final double RISE_SECONDS = 8;

    /** Rises from half to the top, and rests there for so long. */
    private static long passes(double restSeconds, DoubleUnaryOperator disturbance) {
        Told told = new Told();
        Readings meter = new Readings(PeakFinder.create(PeakSettings.defaults(), told), RATE, 0.000_5);
        meter.follow(
                RISE_SECONDS + restSeconds,
                t -> Math.min(1, 0.5 + 0.5 * t / RISE_SECONDS) * (1 + disturbance.applyAsDouble(t)));
        return told.count("passed");
    }

    @ParameterizedTest
    @CsvSource({"0.02, 0.1", "0.02, 0.3", "0.02, 1", "0.03, 0.3"})
    void aBeatIsToldTwiceAtMost(double part, double hertz) {
        long passes = passes(300, t -> part * Math.sin(2 * Math.PI * hertz * t));
        assertTrue(passes <= 2, passes + " times");
    }

    /** One part in five hundred in every octave from 0.04 s to 160 s: renewed half as often in each (Voss's method). */
    @Test
    void flickerIsToldSeldom() {
        SplittableRandom random = new SplittableRandom(77);
        double[] octaves = new double[13];
        long[] readings = {0};
        long passes = passes(1200, t -> {
            octaves[Math.min(Long.numberOfTrailingZeros(++readings[0]), octaves.length - 1)] = random.nextGaussian();
            double sum = 0;
            for (double octave : octaves) {
                sum += octave;
            }
            return 0.002 * sum;
        });
        assertTrue(passes <= 4, passes + " times");
    }
}
