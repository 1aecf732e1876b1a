package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slugpeak.core.peak.Readings.resonance;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SeekTest {

    private final Told told = new Told();

    private Readings meter(Seek seek, double noise) {
        return new Readings(finder(seek), 50, noise);
    }

    private PeakFinder finder(Seek seek) {
        return PeakFinder.create(PeakSettings.defaults().withSeek(seek), told);
    }

    /** A wave trap: the same resonance, upside down. */
    private static DoubleUnaryOperator trap(double topSeconds, double halfSeconds) {
        return t -> 1.05 - resonance(topSeconds, halfSeconds).applyAsDouble(t);
    }

    /** An S-curve: the derivative of a resonance, swing one, zero at a time. */
    private static DoubleUnaryOperator discriminator(double zeroSeconds, double halfSeconds) {
        return t -> 2 * ((t - zeroSeconds) / halfSeconds) / (1 + Math.pow((t - zeroSeconds) / halfSeconds, 2));
    }

    @Nested
    class ADip {

        @Test
        void isPassedReturnedToAndHeld() {
            PeakFinder finder = finder(Seek.DIP);
            new Readings(finder, 50, 0.001)
                    .rest(1, trap(8, 3).applyAsDouble(1))
                    .follow(8.5, trap(8, 3))
                    .follow(1.5, trap(11, 3))
                    .rest(4, 0.05);
            assertEquals(List.of("passed", "returned", "held"), told.words());
            assertEquals(0.05, finder.best(), 0.002);
        }

        @Test
        void callsARisingReadingTheWrongWay() {
            PeakFinder finder = finder(Seek.DIP);
            new Readings(finder, 50, 0.001).rest(2, 0.3).follow(2, t -> 0.3 + 0.1 * (t - 2));
            assertTrue(told.count("wrong-way") >= 1);
            assertEquals(Trend.RISING, finder.trend());
        }
    }

    @Nested
    class AZero {

        @Test
        void needsAChangeOfSign() {
            meter(Seek.ZERO, 0.003)
                    .follow(5.5, discriminator(5, 3))
                    .follow(2, t -> 0.35 - 0.175 * (t - 5.5))
                    .rest(4, 0);
            assertEquals(List.of("passed", "returned", "held"), told.words());
            assertEquals(5, told.first("passed").atNanos() / 1e9, 0.1);
            assertEquals(0, told.first("held").value(), 0.005);
        }

        @Test
        void isRefusedWhereItIsDead() {
            meter(Seek.ZERO, 0.003).follow(5, t -> 1 - 0.2 * t).rest(6, 0);
            assertEquals(List.of("dead-zero"), told.words());
        }

        @Test
        void isTheSameFromTheOtherSide() {
            meter(Seek.ZERO, 0.003).follow(7, t -> -discriminator(5, 3).applyAsDouble(t));
            assertEquals(List.of("passed"), told.words());
        }

        @Test
        void hasNoDecibels() {
            PeakFinder finder = finder(Seek.ZERO);
            new Readings(finder, 50, 0.003).follow(7, discriminator(5, 3));
            assertTrue(Double.isNaN(finder.belowBestDb()));
            assertTrue(Double.isNaN(finder.ofBest()));
            assertEquals(0, finder.best());
            assertTrue(Double.isNaN(told.first("passed").db()));
        }

        @Test
        void isToldAgainWhenItIsOvershot() {
            meter(Seek.ZERO, 0.003)
                    .follow(6, discriminator(5, 3))
                    .follow(3, t -> discriminator(5, 3).applyAsDouble(12 - t));
            assertEquals(2, told.count("passed"));
        }
    }
}
