package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.slugpeak.core.reading.Condition;

/** What holds for every stream of readings. */
class PeakFinderLawsTest {

    private static final int STREAMS = 60;
    private static final double[] EXTREMES = {
        0,
        -0.0,
        Double.MIN_VALUE,
        -Double.MIN_VALUE,
        Double.MIN_NORMAL,
        1,
        -1,
        1e-300,
        1e300,
        Double.MAX_VALUE,
        -Double.MAX_VALUE
    };

    private static final List<Condition> UNTRUSTED =
            Stream.of(Condition.values()).filter(c -> !c.isTrusted()).toList();

    /** Readings as a hand makes them, to and fro over a peak, in one of several rates and noises. */
    private static double[] handMade(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] values = new double[random.nextInt(300, 1500)];
        double place = random.nextDouble(-3, 3);
        double speed = random.nextDouble(0.002, 0.05) * (random.nextBoolean() ? 1 : -1);
        double noise = random.nextBoolean() ? 0 : random.nextDouble(0, 0.05);
        boolean digits = random.nextBoolean();
        for (int i = 0; i < values.length; i++) {
            if (random.nextDouble() < 0.01) {
                speed = -speed;
            }
            place += random.nextDouble() < 0.2 ? 0 : speed;
            double value = 1 / Math.hypot(1, place) + noise * (random.nextDouble() + random.nextDouble() - 1);
            values[i] = digits ? Math.rint(value * 1000) / 1000 : value;
        }
        return values;
    }

    @ParameterizedTest
    @EnumSource(Seek.class)
    void noStreamWhateverMakesItThrowOrRunToInfinity(Seek seek) {
        for (long seed = 0; seed < STREAMS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Told told = new Told();
            PeakFinder finder = PeakFinder.create(new PeakSettings(seek, Duration.ofMillis(200)), told);
            long time = random.nextLong();
            for (int i = 0; i < 2000; i++) {
                time = nextTime(random, time);
                Condition condition =
                        random.nextInt(20) == 0 ? UNTRUSTED.get(random.nextInt(UNTRUSTED.size())) : Condition.OK;
                finder.accept(time, nextValue(random), condition);
                if (random.nextInt(500) == 0) {
                    finder.gap();
                }
                if (random.nextInt(900) == 0) {
                    finder.restart();
                }
                assertSound(finder);
            }
            for (Told.Word word : told.all) {
                assertTrue(!Double.isInfinite(word.value()) && !Double.isInfinite(word.db()), word.toString());
                assertTrue(Double.isNaN(word.db()) || word.db() >= 0, word.toString());
            }
        }
    }

    private static long nextTime(SplittableRandom random, long time) {
        return switch (random.nextInt(20)) {
            case 0 -> time;
            case 1 -> time - random.nextLong(1_000_000_000);
            case 2 -> time + random.nextLong(10_000_000_000L);
            case 3 -> random.nextInt(50) == 0 ? random.nextLong() : time;
            default -> time + random.nextLong(1, 40_000_000);
        };
    }

    private static double nextValue(SplittableRandom random) {
        return switch (random.nextInt(6)) {
            case 0 -> EXTREMES[random.nextInt(EXTREMES.length)];
            case 1 -> nextFinite(random);
            default -> random.nextDouble(-1, 1);
        };
    }

    private static double nextFinite(SplittableRandom random) {
        double any = Double.longBitsToDouble(random.nextLong());
        return Double.isFinite(any) ? any : 0;
    }

    private static void assertSound(PeakFinder finder) {
        assertTrue(!Double.isInfinite(finder.best()));
        assertTrue(!Double.isInfinite(finder.smoothed()));
        assertTrue(!Double.isInfinite(finder.ofBest()));
        assertTrue(!(finder.bestSigma() < 0) && !Double.isInfinite(finder.bestSigma()));
        assertTrue(!(finder.belowBestDb() < 0) && !Double.isInfinite(finder.belowBestDb()));
    }

    @Test
    void aBestNeverExceedsWhatTheSmoothedReadingsReachedWhileTheyRise() {
        for (long seed = 0; seed < STREAMS; seed++) {
            PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), new Told());
            double reached = 0;
            double[] values = handMade(seed);
            Arrays.sort(values);
            for (int i = 0; i < values.length; i++) {
                finder.accept(i * 20_000_000L, values[i], Condition.OK);
                reached = Math.max(reached, finder.smoothed());
                assertTrue(!(finder.best() > reached), "seed " + seed + " at " + i);
            }
        }
    }

    /** The top may lie between two readings, but not above them by more than a third of a step between neighbours. */
    @Test
    void aBestHardlyExceedsTheHighestReading() {
        for (long seed = 0; seed < STREAMS; seed++) {
            PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), new Told());
            double[] values = handMade(seed);
            double most = values[0];
            double largestStep = 0;
            for (int i = 0; i < values.length; i++) {
                finder.accept(i * 20_000_000L, values[i], Condition.OK);
                most = Math.max(most, values[i]);
                largestStep = Math.max(largestStep, i == 0 ? 0 : Math.abs(values[i] - values[i - 1]));
                assertTrue(!(finder.best() > most + largestStep / 3), "seed " + seed + " at " + i);
            }
        }
    }

    @Test
    void aRestartedFinderTellsWhatAFreshOneTells() {
        for (long seed = 0; seed < STREAMS; seed++) {
            double[] values = handMade(seed);
            Told again = new Told();
            PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), again);
            Readings rest = new Readings(finder, 50, 0.01);
            rest.rest(20, 0.5);
            finder.restart();
            again.all.clear();
            Told fresh = new Told();
            PeakFinder other = PeakFinder.create(PeakSettings.defaults(), fresh);
            assertEquals(other.best(), finder.best());
            assertEquals(other.smoothed(), finder.smoothed());
            assertEquals(other.trend(), finder.trend());
            assertEquals(other.belowBestDb(), finder.belowBestDb());
            for (int i = 0; i < values.length; i++) {
                finder.accept(100_000_000_000L + i * 20_000_000L, values[i], Condition.OK);
            }
            assertTrue(finder.best() <= 1.1 && finder.best() > 0, "seed " + seed);
        }
    }

    @Test
    void aDwellOfAnyLengthIsTaken() {
        PeakSettings patient = PeakSettings.defaults().withDwell(Duration.ofSeconds(Long.MAX_VALUE));
        PeakFinder finder = PeakFinder.create(patient, new Told());
        finder.accept(0, 1, Condition.OK);
        assertEquals(List.of(1.0), List.of(finder.smoothed()));
    }
}
