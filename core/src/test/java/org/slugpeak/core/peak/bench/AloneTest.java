package org.slugpeak.core.peak.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.peak.Seek;

/** Noise about nothing has no peak; a signal a little above it has. */
class AloneTest {

    private static final long FIRST_SEED = 67_900_000;
    private static final double LASTS_SECONDS = 900;

    /** What relaxes within a second; slower noise is a zero that drifts, as far as one minute shows. */
    private static final int QUICK_KINDS = 4;

    private static Alone.Count told(double rate, int digit, Seek seek) {
        return Alone.kinds().subList(0, QUICK_KINDS).stream()
                .map(kind -> Alone.of(kind, digit, rate, LASTS_SECONDS, FIRST_SEED + digit, seek))
                .reduce(new Alone.Count(0, 0, 0, 0), Alone.Count::plus);
    }

    /** Nobody knows of the first movement that it is noise: one pass, or a few, is told of each adjuster, and taken back. */
    @ParameterizedTest
    @CsvSource({"2, 0", "5, 0", "10, 0", "50, 0", "200, 0", "2, 1", "5, 1", "10, 1", "50, 1", "200, 1"})
    void isNotHeldAndHardlyEverPassed(double rate, int digit) {
        Alone.Count told = told(rate, digit, Seek.PEAK);
        assertEquals(0, told.held());
        assertTrue(told.returned() <= QUICK_KINDS, told.toString());
        assertTrue(told.passed() <= 2 * QUICK_KINDS, told.toString());
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 50})
    void isNoDipEither(double rate) {
        Alone.Count told = told(rate, 0, Seek.DIP);
        assertEquals(0, told.held());
        assertTrue(told.passed() <= 2 * QUICK_KINDS, told.toString());
    }

    @Test
    void isSaidToBeNoSignal() {
        for (Kind kind : Alone.kinds()) {
            Alone.Count told = Alone.of(kind, 0, 50, LASTS_SECONDS, FIRST_SEED, Seek.PEAK);
            assertTrue(told.signalGone() >= 1, kind.name());
        }
    }

    /** From where noise of a tenth or a thirtieth of the peak hides everything, at 40 degrees a second. */
    @ParameterizedTest
    @CsvSource({"0, 0.1", "0, 0.03", "2, 0.03"})
    void aWeakSignalIsPassed(int kind, double sigma) {
        int passed = 0;
        for (int seed = 0; seed < 20; seed++) {
            passed += isPassed(Alone.kinds().get(kind), sigma, FIRST_SEED + seed) ? 1 : 0;
        }
        assertTrue(passed >= 18, passed + " of 20");
    }

    private static boolean isPassed(Kind kind, double sigma, long seed) {
        Disturbance noise = kind.maker().make(new SplittableRandom(seed), 50);
        double[] passedAt = {Double.NaN};
        Watcher finder = Watcher.finder(new Ear() {
            @Override
            public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
                passedAt[0] = tNanos / 1e9;
            }
        });
        double top = 40;
        for (double seconds = 0; seconds < top + 10 && !(passedAt[0] > top); seconds += 0.02) {
            double halfWidths = (seconds - top) * 40 / Family.IF_SLUG;
            double level = 1 / (1 + halfWidths * halfWidths);
            finder.accept(Math.round(1e9 * seconds), level + sigma * noise.read(seconds, 0));
        }
        return passedAt[0] > top;
    }
}
