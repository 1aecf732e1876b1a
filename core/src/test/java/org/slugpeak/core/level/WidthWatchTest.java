package org.slugpeak.core.level;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Peaks of single circuits, crossed at an even speed unless something else is said. */
class WidthWatchTest {

    private static final OptionalDouble NOTHING = OptionalDouble.empty();

    private final WidthWatch watch = new WidthWatch();
    private long tNanos;

    private void rise(double top, double secondsPerHalfWidth, double from) {
        for (double x = from; x > 0; x -= 0.01) {
            tNanos += Math.round(1e9 * 0.01 * secondsPerHalfWidth);
            watch.level(tNanos, top / Math.hypot(1, x));
        }
    }

    private OptionalDouble cross(String adjuster, double top, double secondsPerHalfWidth) {
        watch.begin(adjuster);
        rise(top, secondsPerHalfWidth, 1.3);
        return watch.passed(top, top);
    }

    private void usualPeaks(int count) {
        for (int i = 0; i < count; i++) {
            assertEquals(NOTHING, cross("slug " + i, 0.5, 2 + 0.2 * (i % 3 - 1)));
        }
    }

    /** Half as high again and 1.7 times as wide: the signal may be too strong. */
    @ParameterizedTest
    @CsvSource({"0.8, 4, true", "0.72, 3.6, true", "0.68, 4, false", "0.8, 3.2, false", "0.8, 2, false", "0.3, 4, false"
    })
    void aPeakThatIsHigherAndWiderThanAllEarlierOnesIsTold(double top, double secondsPerHalfWidth, boolean isTold) {
        usualPeaks(3);
        OptionalDouble times = cross("slug", top, secondsPerHalfWidth);
        assertEquals(isTold, times.isPresent());
        if (isTold) {
            assertEquals(secondsPerHalfWidth / 2, times.getAsDouble(), 0.1);
        }
    }

    @Test
    void twoEarlierPeaksAreNoMeasure() {
        usualPeaks(2);
        assertEquals(NOTHING, cross("slug", 0.8, 4));
    }

    /** Not even where it is not told: it would be the measure of the next one. */
    @Test
    void aPeakThatMayBeTooWideIsNoMeasureOfLaterOnes() {
        usualPeaks(2);
        for (int i = 0; i < 5; i++) {
            assertEquals(NOTHING, cross("slug", 0.8, 3.2));
        }
        usualPeaks(1);
        assertEquals(2, cross("slug", 0.8, 4).orElse(0), 0.25);
        assertEquals(2, cross("slug", 0.8, 4).orElse(0), 0.25);
    }

    @ParameterizedTest
    @CsvSource({"Trimmer 5", "padder of long wave"})
    void trimmersPaddersAndSlugsAreComparedWithTheirOwnKind(String other) {
        usualPeaks(3);
        assertEquals(NOTHING, cross(other, 0.8, 4));
        usualPeaks(1);
        for (int i = 0; i < 2; i++) {
            assertEquals(NOTHING, cross(other, 0.8, 4));
        }
        assertEquals(2, cross(other, 1.6, 8).orElse(0), 0.1);
    }

    @Test
    void onlyTheFirstPassOfAnAdjusterIsJudged() {
        usualPeaks(3);
        assertEquals(NOTHING, cross("slug", 0.5, 2));
        rise(0.8, 4, 1.3);
        assertEquals(NOTHING, watch.passed(0.8, 0.8));
    }

    /** The hand rests for ten seconds at 0.55 half-widths from the top. */
    @Test
    void aPauseOfTheHandDoesNotCount() {
        usualPeaks(3);
        watch.begin("slug");
        for (double x = 1.3; x > 0; x -= 0.01) {
            tNanos += Math.round(1e9 * (Math.abs(x - 0.55) < 0.005 ? 10 : 0.02));
            watch.level(tNanos, 0.8 / Math.hypot(1, x));
        }
        assertEquals(NOTHING, watch.passed(0.8, 0.8));
    }

    /** Seen from 0.55 half-widths on: two steps. */
    @Test
    void tooLittleOfAFlankIsNoMeasure() {
        usualPeaks(3);
        watch.begin("slug");
        rise(0.8, 4, 0.55);
        assertEquals(NOTHING, watch.passed(0.8, 0.8));
        rise(0.8, 4, 0.75);
        assertEquals(2, watch.passed(0.8, 0.8).orElse(0), 0.2);
    }

    @Test
    void aFlankIsNotFollowedOverAGap() {
        usualPeaks(3);
        watch.begin("slug");
        rise(0.8, 4, 1.3);
        watch.gap();
        assertEquals(NOTHING, watch.passed(0.8, 0.8));
    }

    @Test
    void nothingAtAllIsNoLevel() {
        watch.begin("slug");
        watch.level(1, 0);
        rise(0.5, 2, 1.3);
        assertEquals(NOTHING, watch.passed(0.5, 0.5));
        usualPeaks(2);
        assertEquals(2, cross("slug", 0.8, 4).orElse(0), 0.2);
    }

    /** The generator was halved: the finder goes on on the old scale, the meter shows half. */
    @Test
    void whatTheMeterShowsIsWhatIsTooHigh() {
        usualPeaks(3);
        watch.begin("slug");
        rise(0.8, 4, 1.3);
        assertEquals(NOTHING, watch.passed(0.8, 0.4));
    }
}
