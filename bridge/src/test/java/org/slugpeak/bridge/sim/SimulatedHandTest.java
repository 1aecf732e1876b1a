package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.rehearsal.PlannedSet;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Said;
import org.slugpeak.core.word.Refused;

class SimulatedHandTest {

    private final Slug slug = new Slug();
    private final SimulatedHand hand = new SimulatedHand(HandModel.PRACTISED, new SplittableRandom(1));
    private long nowNanos;

    /** Remembers which way it was turned last. */
    private static final class Slug implements Adjustable {

        private double turns;
        private int way;

        @Override
        public double turns() {
            return turns;
        }

        @Override
        public void turnTo(double newTurns) {
            way = newTurns == turns ? way : (int) Math.signum(newTurns - turns);
            turns = newTurns;
        }

        @Override
        public void touch(boolean tool) {}

        @Override
        public double reachTurns() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public double widthTurns() {
            return 0.2;
        }
    }

    @BeforeEach
    void begin() throws Refused {
        PlannedSet set = PlannedSet.of(RandomPlans.of(2), 2);
        SplittableRandom random = new SplittableRandom(2);
        OtherHand other = new OtherHand(set, hand, random.split());
        SimulatedMeter meter = new SimulatedMeter(MeterModel.CONVERTER, random.split());
        hand.begin(slug, new Bench(set, meter, hand, other, List.of()));
        hand.hear(new Said.Command(0, new Instruction.Find(Seek.ZERO)), 0);
        turn(1);
    }

    private void turn(double seconds) {
        for (long until = nowNanos + (long) (seconds * 1e9); nowNanos < until; nowNanos += Bench.TICK_NANOS) {
            hand.step(nowNanos);
        }
    }

    private void passed() {
        hand.hear(new Passed(nowNanos, 0, nowNanos, Double.NaN), nowNanos);
    }

    @Test
    void turnsBackWhereItHasPassed() {
        int before = slug.way;
        passed();
        turn(1.5);
        assertEquals(-before, slug.way);
    }

    /** Each time it is slower, and longer in the play of its tool. */
    @Test
    void turnsBackOnceHoweverOftenItHearsThatWhileItsToolIsInItsPlay() {
        for (int i = 0; i < 4; i++) {
            passed();
            turn(1.5);
        }
        int before = slug.way;
        passed();
        turn(0.5);
        assertEquals(before, slug.way);
        passed();
        turn(2);
        assertNotEquals(before, slug.way);
    }
}
