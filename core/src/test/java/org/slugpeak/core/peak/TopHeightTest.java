package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How high a top is said to be, and how sure that is, for shapes whose height is known. The top is 0.3 V high. */
class TopHeightTest {

    private static final double VOLTS = 0.3;

    private final Blocks blocks = new Blocks();
    private final Smoother smoother = new Smoother();
    private final Top top = new Top(blocks.front);

    private void look() {
        smoother.look(blocks.front.pyramid, blocks.front.noise, Blocks.SECONDS);
        top.look(smoother.value());
    }

    private void follow(int count, IntToDoubleFunction level) {
        blocks.add(count, i -> VOLTS * level.applyAsDouble(i), this::look);
    }

    /** Where a mean of L blocks loses c (L² - 1) / 12, what is made of those over L and 2 L is right to c / 12. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-4, 1e-5, 1e-6})
    void aParabolaIsAsHighAsItIs(double curvature) {
        int half = (int) Math.sqrt(0.1 / curvature);
        follow(2 * half, i -> 1 - curvature * (i - half) * (i - half));
        assertEquals(1, top.value() / VOLTS, curvature / 4 + 4e-5);
    }

    /** A resonance is no parabola: the means that are too long for it are left out. */
    @ParameterizedTest
    @ValueSource(doubles = {6, 12, 50, 200})
    void aResonanceIsAsHighAsItIs(double halfWidth) {
        int half = (int) (4 * halfWidth);
        follow(2 * half, Blocks.resonance(half, halfWidth));
        assertEquals(1, top.value() / VOLTS, 2e-4 + 0.25 / (halfWidth * halfWidth));
    }

    /** The longest mean within 3 s has 128 blocks; what is made of it and one twice as long has 1.18 of its sigma. */
    @ParameterizedTest
    @CsvSource({"0.003, 1", "0.003, 2", "0.03, 3", "0.03, 4"})
    void aLevelAtRestIsKnownAsWellAsTheLongestMean(double noise, long seed) {
        Gauss gauss = new Gauss(seed);
        follow(1000, i -> 1 + noise * gauss.next());
        double longest = noise / Math.sqrt(128);
        assertEquals(1.18 * longest, top.sigma() / VOLTS, 0.2 * longest);
        assertEquals(1, top.value() / VOLTS, 4 * longest);
    }

    /** Of many noisy means the highest is too high by chance; that is taken off: less than a sigma of the longest mean is left. */
    @ParameterizedTest
    @ValueSource(ints = {8, 40, 300})
    void theHighestOfManyIsNoHigherThanTheLevel(int count) {
        double error = 0;
        int runs = 60;
        for (int seed = 0; seed < runs; seed++) {
            Gauss gauss = new Gauss(seed);
            blocks.add(200, i -> VOLTS * (1 + 0.01 * gauss.next()));
            top.forget();
            follow(count, i -> 1 + 0.01 * gauss.next());
            error += (top.value() / VOLTS - 1) / runs;
        }
        assertEquals(0, error, 0.8 * 0.01 / Math.sqrt(Math.min(count, 128)));
    }

    /** What it would be if the means were extrapolated over the corner is 1 percent more. */
    /** The top of a beat is not the top of the curve. */
    @Test
    void slowNoiseMakesItNoHigherThanItGoes() {
        follow(1500, i -> 1 + 0.005 * Math.sin(2 * Math.PI * 0.7 * Blocks.SECONDS * i));
        assertTrue(top.value() / VOLTS < 1.004, "value " + top.value() / VOLTS);
    }

    @Test
    void aHandThatStopsAtTheTopMakesItNoHigher() {
        follow(100, i -> 0.5 + 0.005 * i);
        follow(10, i -> 1);
        follow(1, i -> 0.999);
        assertEquals(1, top.value() / VOLTS, 1e-4);
    }

    @Test
    void aTopJustBehindIsWhereItWas() {
        follow(104, i -> 1 - 1e-4 * (i - 100) * (i - 100));
        assertEquals(101, top.atNanos() / 1e9 / Blocks.SECONDS, 2.1);
    }

    @Test
    void aTopLongBehindIsWhereItWas() {
        follow(300, i -> 1 - 1e-4 * (i - 100) * (i - 100));
        assertEquals(101, top.atNanos() / 1e9 / Blocks.SECONDS, 2.1);
    }

    /** While it rises no top is higher than the smoothed reading has been. */
    @Test
    void whatTheSmoothedReadingHasReachedCounts() {
        blocks.add(10, i -> 0.5);
        blocks.add(1, i -> 0.9);
        top.look(0.8);
        assertEquals(0.8, top.value());
        blocks.add(1, i -> 0.91);
        top.look(0.7);
        assertEquals(0.8, top.value());
    }

    /** Who has looked at the value needs not look again before there was a change. */
    @Test
    void theCountOfChangesGrowsWheneverTheValueDoes() {
        Gauss gauss = new Gauss(9);
        IntToDoubleFunction level = Blocks.resonance(60, 20);
        long[] changes = {0};
        double[] value = {Double.NaN};
        blocks.add(120, i -> level.applyAsDouble(i) + 0.01 * gauss.next(), () -> {
            look();
            assertTrue(top.changes() >= changes[0]);
            assertTrue(top.changes() > changes[0] || top.value() == value[0]);
            changes[0] = top.changes();
            value[0] = top.value();
        });
    }
}
