package org.slugpeak.core.peak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slugpeak.core.peak.Despiker.Outcome;

/** At 50 readings/s; neighbours differ by 0.01, whose scale is 0.01 / 0.7809 = 0.0128, so that far is 4.5 times this, 0.0576. */
class DespikerTest {

    private static final double INTERVAL = 0.02;

    private final Despiker despiker = new Despiker();
    private long tNanos;

    private Outcome offer(double value) {
        return offer(value, INTERVAL);
    }

    private Outcome offer(double value, double intervalSeconds) {
        Outcome outcome = despiker.offer(tNanos++, value, intervalSeconds);
        if (outcome == Outcome.STEP) {
            despiker.release();
        }
        return outcome;
    }

    @BeforeEach
    void neighboursThatDifferByAHundredth() {
        for (int i = 0; i < 401; i++) {
            assertEquals(Outcome.GOOD, offer(1 + 0.01 * (i % 2)));
        }
    }

    @ParameterizedTest
    @CsvSource({"1.055, GOOD", "1.06, WAIT", "0.945, GOOD", "0.94, WAIT", "9, WAIT", "-9, WAIT"})
    void aReadingIsFarBeyondFourAndAHalfUsualJumps(double value, Outcome outcome) {
        assertEquals(outcome, offer(value));
    }

    /** Of three jumps nobody knows yet what is usual. */
    @ParameterizedTest
    @CsvSource({"2, GOOD", "3, WAIT"})
    void theFourthJumpIsTheFirstThatIsJudged(int jumpsBefore, Outcome outcome) {
        Despiker young = new Despiker();
        for (int i = 0; i <= jumpsBefore; i++) {
            young.offer(i, 1 + 0.01 * (i % 2), INTERVAL);
        }
        assertEquals(outcome, young.offer(9, 5, INTERVAL));
    }

    @Test
    void aSpikeIsLeftOut() {
        assertEquals(Outcome.WAIT, offer(2));
        assertEquals(Outcome.GOOD, offer(1));
        assertEquals(0, despiker.held());
    }

    @Test
    void threeSpikesInARowAreLeftOutAtThisRate() {
        assertEquals(Outcome.WAIT, offer(2));
        assertEquals(Outcome.WAIT, offer(2));
        assertEquals(Outcome.WAIT, offer(2));
        assertEquals(Outcome.GOOD, offer(1));
    }

    @Test
    void aStepGoesOnWithEveryReadingOfIt() {
        offer(2);
        offer(2.01);
        offer(2.02);
        long last = tNanos;
        assertEquals(Outcome.STEP, despiker.offer(last, 2.03, INTERVAL));
        assertEquals(4, despiker.held());
        for (int i = 0; i < 4; i++) {
            assertEquals(2 + 0.01 * i, despiker.value(i));
            assertEquals(last - 3 + i, despiker.tNanos(i));
        }
        despiker.release();
        assertEquals(0, despiker.held());
    }

    @Test
    void aSlowMeterNeedsTwoReadingsForAStep() {
        assertEquals(Outcome.WAIT, offer(2, 0.5));
        assertEquals(Outcome.STEP, offer(2, 0.5));
    }

    @Test
    void aHandThatBeginsToTurnIsAStep() {
        assertEquals(Outcome.WAIT, offer(1.1, 0.5));
        assertEquals(Outcome.STEP, offer(1.5, 0.5));
    }

    /** It is nearer to the first stranger than neighbours usually are, though its own jump is much smaller. */
    @Test
    void aNeighbourOfTheFirstStrangerAgreesWithIt() {
        assertEquals(Outcome.WAIT, offer(1.1, 0.5));
        assertEquals(Outcome.STEP, offer(1.065, 0.5));
    }

    /** Sixty milliseconds are two readings there, and the third agrees. */
    @Test
    void at33AndAThirdASecondTwoReadingsWait() {
        assertEquals(Outcome.WAIT, offer(2, 0.03));
        assertEquals(Outcome.WAIT, offer(2, 0.03));
        assertEquals(Outcome.STEP, offer(2, 0.03));
    }

    @ParameterizedTest
    @CsvSource({"-1", "9"})
    void strangersThatDisagreeAreNoStep(double second) {
        assertEquals(Outcome.WAIT, offer(2, 0.5));
        assertEquals(Outcome.WAIT, offer(second, 0.5));
        assertEquals(1, despiker.held());
    }

    /** They go to and fro, each time by another tenth, so that no two of them agree. */
    @Test
    void afterEightStrangersSuchJumpsAreUsual() {
        for (int i = 0; i < 7; i++) {
            assertEquals(Outcome.WAIT, offer(1 + stranger(i)));
        }
        for (int i = 7; i < 16; i++) {
            assertEquals(Outcome.GOOD, offer(1 + stranger(i)));
            assertEquals(0, despiker.held());
        }
    }

    private static double stranger(int index) {
        return (index % 2 == 0 ? 1 : -1) * (10 + index);
    }

    @Test
    void anythingMayFollowAGap() {
        offer(2);
        despiker.gap();
        assertEquals(0, despiker.held());
        assertEquals(Outcome.GOOD, offer(5));
        assertEquals(Outcome.GOOD, offer(5.01));
        assertEquals(Outcome.WAIT, offer(1));
    }
}
