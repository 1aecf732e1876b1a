package org.slugpeak.cli.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PitchScaleTest {

    private static double cents(double one, double other) {
        return 1200 * Math.log(one / other) / Math.log(2);
    }

    @ParameterizedTest
    @CsvSource({"0,0", "0.1,40", "0.5,200", "1,400", "1.1,420", "4,1000", "7,1600"})
    void anOctaveIsThreeDecibelsNearTheBestAndSixBeyond(double distanceDb, double centsBelow) {
        assertEquals(centsBelow, cents(1600, PitchScale.hertz(1600, distanceDb)), 1e-9);
    }

    @Test
    void whatIsBetterThanTheBestStandsWhereTheBestWillStand() {
        assertEquals(-200, cents(1000, PitchScale.hertz(1000, -1)), 1e-9);
    }

    @Test
    void aTenthOfADecibelIsAtLeastTwentyCentsEverywhereOnTheScale() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 1000; i++) {
            double best = random.nextDouble(PitchScale.LOWEST_BEST_HERTZ, PitchScale.HIGHEST_HERTZ);
            double distanceDb = random.nextDouble(0, 9.5);
            double step = cents(PitchScale.hertz(best, distanceDb), PitchScale.hertz(best, distanceDb + 0.1));
            assertTrue(step >= 20 - 1e-6, step + " cents at " + distanceDb + " dB below " + best + " Hz");
        }
    }

    @Test
    void theWholeRangeIsTwoHundredToTwoThousandHertz() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 1000; i++) {
            double best = random.nextDouble(PitchScale.LOWEST_BEST_HERTZ, PitchScale.HIGHEST_HERTZ);
            double hertz = PitchScale.hertz(best, random.nextDouble(0, 80));
            assertTrue(hertz >= 200 && hertz <= 2000);
            double zero = PitchScale.zeroHertz(random.nextDouble());
            assertTrue(zero >= 200 && zero <= 1000);
        }
    }

    @Test
    void aZeroIsHighestAtZeroAndFallsAllTheWayToTheLargestSwing() {
        assertEquals(1000, PitchScale.zeroHertz(0), 1e-9);
        double before = Double.MAX_VALUE;
        for (double fraction = 0; fraction <= 1; fraction += 0.01) {
            double hertz = PitchScale.zeroHertz(fraction);
            assertTrue(hertz < before, "at " + fraction);
            before = hertz;
        }
        assertTrue(cents(1000, PitchScale.zeroHertz(0.01)) > 200, "a hundredth of the swing is more than a tone");
    }
}
