package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Averaged over the half second that a turning hand can wait for, noise may hide a tenth of a decibel and no more. */
class NoiseWatchTest {

    private final Told told = new Told();
    private final NoiseWatch watch = new NoiseWatch(told);
    private final SplittableRandom random = new SplittableRandom(3);
    private long tNanos;

    private void read(double seconds, double perSecond, double volts, double noise) {
        for (int i = 0; i < seconds * perSecond; i++) {
            tNanos += Math.round(1e9 / perSecond);
            watch.accept(tNanos, volts * (1 + noise * random.nextGaussian()));
        }
    }

    /** Decibels hidden: 8.69 noise / sqrt(readings in half a second). */
    @ParameterizedTest
    @CsvSource({"50, 0.04, 0", "50, 0.09, 1", "10, 0.018, 0", "10, 0.04, 1", "200, 0.08, 0", "200, 0.17, 1"})
    void whatHidesMoreThanATenthIsWeak(double perSecond, double noise, int times) {
        read(20, perSecond, 0.3, noise);
        assertEquals(times, told.all("weak").size());
    }

    @Test
    void itIsToldHowFarTheSignalIsAboveItsNoise() {
        read(20, 50, 0.3, 0.1);
        assertEquals(20, told.first("weak").amount(), 2.5);
    }

    @Test
    void itIsToldAgainOnlyAfterItWasBetterAndHalfAMinuteLater() {
        read(20, 50, 0.3, 0.1);
        read(20, 50, 0.3, 0.01);
        read(20, 50, 0.3, 0.1);
        assertEquals(2, told.all("weak").size());
        read(100, 50, 0.3, 0.1);
        assertEquals(2, told.all("weak").size());
    }

    @Test
    void whatWasBeforeAGapIsNoPartOfIt() {
        read(2.9, 50, 0.3, 0.2);
        watch.gap();
        read(2.9, 50, 0.3, 0.2);
        assertEquals(0, told.all("weak").size());
    }
}
