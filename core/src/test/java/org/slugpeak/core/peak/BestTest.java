package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BestTest {

    private final Blocks blocks = new Blocks();
    private final Smoother smoother = new Smoother();
    private final Best best = new Best(blocks.front);

    private void cross(double height, double halfWidth, double sigma, long seed) {
        Gauss gauss = new Gauss(seed);
        int topAt = (int) Math.round(3 * halfWidth);
        IntToDoubleFunction level = Blocks.resonance(topAt, halfWidth);
        blocks.add(2 * topAt, i -> height * level.applyAsDouble(i) + sigma * gauss.next(), () -> {
            smoother.look(blocks.front.pyramid, blocks.front.noise, Blocks.SECONDS);
            best.top().look(smoother.value());
        });
    }

    /** The mean of two measurements of one thing, weighted by the inverse of their variances, and its sigma. */
    @ParameterizedTest
    @CsvSource({"8, 80", "80, 8", "12, 40", "30, 30"})
    void twoLooksAtOneTopAreJoinedByTheirVariances(double firstHalfWidth, double secondHalfWidth) {
        cross(1, firstHalfWidth, 0.004, 1);
        double first = best.value();
        double firstSigma = best.sigma();
        best.settle();
        cross(1, secondHalfWidth, 0.004, 2);
        best.same();
        double second = best.top().value();
        double secondSigma = best.top().sigma();
        double firstWeight = 1 / (firstSigma * firstSigma);
        double secondWeight = 1 / (secondSigma * secondSigma);
        double joined = (first * firstWeight + second * secondWeight) / (firstWeight + secondWeight);
        assertEquals(joined, best.value(), 1e-12);
        assertEquals(Math.sqrt(1 / (firstWeight + secondWeight)), best.sigma(), 1e-12);
        assertTrue(best.sigma() < Math.min(firstSigma, secondSigma));
    }

    @Test
    void aLowerTopLeavesItUntilItIsSaidToBeTheSame() {
        cross(1, 25, 0.002, 3);
        double first = best.value();
        long at = best.atNanos();
        best.settle();
        cross(0.9, 25, 0.002, 4);
        assertEquals(first, best.value());
        assertEquals(at, best.atNanos());
        assertEquals(first - best.top().value(), best.missing());
        assertEquals(0.1, best.missing(), 0.01);
        assertTrue(best.sigmaOfMissing() > best.sigma());
    }

    /** It is the time of the better look that counts. */
    @ParameterizedTest
    @CsvSource({"8, 80, true", "80, 8, false"})
    void isWhereTheSurerLookSawIt(double firstHalfWidth, double secondHalfWidth, boolean second) {
        cross(1, firstHalfWidth, 0.004, 1);
        long firstAt = best.atNanos();
        best.settle();
        cross(1, secondHalfWidth, 0.004, 2);
        best.same();
        assertEquals(second ? best.top().atNanos() : firstAt, best.atNanos());
    }

    /** Whatever was asked before: what is asked first is as true as the rest. */
    @Test
    void isWhatWasSeenLastWhicheverIsAskedFirst() {
        cross(1, 25, 0.002, 7);
        best.lowerBy(0.03);
        assertEquals(0.97, best.value(), 0.003);
        cross(1.5, 25, 0.002, 8);
        assertEquals(best.top().atNanos(), best.atNanos());
        best.settle();
        assertEquals(1.5, best.value(), 0.01);
        cross(1.8, 25, 0.002, 9);
        assertEquals(best.top().sigma(), best.sigma(), 0.5 * best.top().sigma());
        assertEquals(1.8, best.value(), 0.01);
    }

    @Test
    void aHigherTopRaisesIt() {
        cross(1, 25, 0.002, 5);
        double sigma = best.sigma();
        best.settle();
        cross(1.2, 25, 0.002, 6);
        assertTrue(best.value() <= best.top().value());
        assertTrue(best.value()
                > best.top().value() - 2 * Math.hypot(sigma, best.top().sigma()) - 1e-12);
        assertEquals(1.2, best.value(), 0.02);
    }

    @Test
    void aTopThatIsSurelyHigherStandsAlone() {
        cross(1, 25, 0.002, 5);
        best.settle();
        cross(1.2, 25, 0.002, 6);
        best.same();
        assertEquals(best.top().value(), best.value());
        assertEquals(best.top().sigma(), best.sigma());
        assertEquals(best.top().atNanos(), best.atNanos());
    }

    @Test
    void aBestThatDriftedIsLowerByThatMuchAndJustAsSure() {
        cross(1, 25, 0.002, 7);
        double value = best.value();
        double sigma = best.sigma();
        long at = best.atNanos();
        best.lowerBy(0.03);
        assertEquals(value - 0.03, best.value());
        assertEquals(sigma, best.sigma());
        assertEquals(at, best.atNanos());
    }

    @Test
    void aBestIsRecalledWhateverCameSince() {
        cross(1, 25, 0.002, 7);
        Best.Mark mark = best.mark();
        best.forget();
        cross(0.4, 25, 0.002, 8);
        best.recall(mark);
        assertEquals(mark, best.mark());
        cross(0.9, 25, 0.002, 9);
        assertEquals(mark, best.mark());
    }

    @Test
    void isUnknownUntilSomethingWasSeenAndOnceForgotten() {
        assertFalse(best.known());
        cross(1, 25, 0.002, 9);
        assertTrue(best.known());
        assertTrue(best.isMissedBy(0.9));
        assertFalse(best.isMissedBy(best.value()));
        best.forget();
        assertFalse(best.known());
    }
}
