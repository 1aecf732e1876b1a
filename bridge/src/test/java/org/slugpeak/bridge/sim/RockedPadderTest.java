package org.slugpeak.bridge.sim;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.progress.AlignmentProgress;
import org.slugpeak.core.progress.Order;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.receiver.Generator;
import org.slugpeak.core.receiver.Part;
import org.slugpeak.core.receiver.SimulatedReceiver;
import org.slugpeak.core.receiver.Tarnfield;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.Work;

/**
 * The padder at the low end with the gang rocked across the signal (common practice): the greatest sweep, not the mark on the
 * dial, decides. A hand rocks the gang until the reading has fallen well off, and back, while the other turns the padder slowly,
 * past its optimum and back.
 */
class RockedPadderTest {

    private static final double SIGNAL_HZ = 600e3;
    private static final double ROCK_HZ = 9e3;
    private static final double READINGS_PER_SECOND = 50;
    private static final double NOISE_SHARE = 0.0035;
    private static final double TURNS_PER_SECOND = 0.04;
    private static final double GANG_HZ_PER_SECOND = 15e3;
    private static final double LEVEL_VOLTS = 0.5;
    private static final double LONGEST_SECONDS = 300;

    private final SimulatedReceiver receiver = new SimulatedReceiver(Tarnfield.design(), Set.of(), 5);

    private static Plan plan() {
        Setup setup = new Setup(
                OptionalDouble.of(SIGNAL_HZ),
                "none",
                "antenna",
                "200 pF",
                OptionalDouble.of(SIGNAL_HZ),
                "",
                "detector",
                Optional.empty(),
                HighTension.POSSIBLE);
        PlanStep step = new PlanStep(
                Part.C3.label(), Goal.ON_DIAL, setup, true, Optional.empty(), Acceptance.MAXIMUM, List.of());
        Stage stage = new Stage("MW low end", List.of(step), new RepeatRule(0.2, 1));
        return new Plan(
                "Tarnfield 54A",
                Chassis.TRANSFORMER,
                List.of(),
                List.of(IntermediateFrequency.of(455e3)),
                List.of(),
                List.of(stage),
                List.of());
    }

    private void receive() {
        for (Part part : Part.values()) {
            receiver.set(part, 0);
        }
        receiver.tune(SIGNAL_HZ);
        Generator silent = new Generator(SIGNAL_HZ, 0, false, Generator.Lead.AERIAL);
        receiver.feed(silent);
        receiver.feed(silent.withVolts(receiver.generatorVoltsFor(LEVEL_VOLTS)));
    }

    /** The most that any gang setting gives with the padder where it is. */
    private double sweepTop(double padderTurns) {
        receiver.set(Part.C3, padderTurns);
        double top = 0;
        for (double offset = -3 * ROCK_HZ; offset <= 3 * ROCK_HZ; offset += 300) {
            receiver.tune(SIGNAL_HZ + offset);
            top = Math.max(top, 1 / receiver.generatorVoltsFor(LEVEL_VOLTS));
        }
        return top;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void endsWithinATenthOfADecibelOfThePadderOptimum(long seed) {
        receive();
        Hands hands = new Hands(seed);
        for (int i = 0; !hands.over && i < LONGEST_SECONDS * READINGS_PER_SECOND; i++) {
            hands.step();
        }
        assertTrue(hands.over, "the tool never said that the optimum is reached");
        double best = 0;
        for (double turns = -1; turns <= 1; turns += 0.05) {
            best = Math.max(best, sweepTop(turns));
        }
        double lossDb = 20 * Math.log10(best / sweepTop(hands.padder));
        assertTrue(lossDb <= 0.1, lossDb + " dB below the optimum, padder at " + hands.padder);
    }

    /** One hand at the gang, one at the padder, both obeying the tool. */
    private final class Hands implements Order.Matcher {

        private final SplittableRandom random;
        private final AlignmentProgress progress = new AlignmentProgress(plan());
        private double padder;
        private double turning = TURNS_PER_SECOND;
        private double gangHz = SIGNAL_HZ;
        private double rocking = GANG_HZ_PER_SECOND;
        private double sweepTop;
        private int worse;
        private boolean begun;
        private boolean over;
        private long tNanos;

        Hands(long seed) {
            random = new SplittableRandom(seed);
            padder = -0.6 - random.nextDouble(0.4);
            gangHz = peakOfGang();
        }

        private double peakOfGang() {
            receiver.set(Part.C3, padder);
            double best = 0;
            double at = SIGNAL_HZ;
            for (double hz = SIGNAL_HZ - 40e3; hz <= SIGNAL_HZ + 40e3; hz += 500) {
                receiver.tune(hz);
                double gain = 1 / receiver.generatorVoltsFor(LEVEL_VOLTS);
                at = gain > best ? hz : at;
                best = Math.max(best, gain);
            }
            return at;
        }

        void step() {
            tNanos += Math.round(1e9 / READINGS_PER_SECOND);
            if (begun) {
                gangHz += rocking / READINGS_PER_SECOND;
                padder += turning / READINGS_PER_SECOND;
            }
            receiver.set(Part.C3, padder);
            receiver.tune(gangHz);
            double gain = receiver.generator().volts() / receiver.generatorVoltsFor(LEVEL_VOLTS);
            double level = LEVEL_VOLTS * gain * (1 + NOISE_SHARE * random.nextDouble(-1, 1));
            rock(level);
            progress.take(new ReadingTaken(Reading.of(tNanos, level), level, level, Double.NaN, 1, Trend.STEADY));
            for (Optional<Order> order = progress.nextOrder(); order.isPresent(); order = progress.nextOrder()) {
                order.get().match(this);
            }
        }

        /** The hand turns the gang back where the reading has fallen by 3 dB. */
        private void rock(double level) {
            sweepTop = Math.max(sweepTop, level);
            if (level < 0.7 * sweepTop) {
                rocking = -rocking;
                sweepTop = level;
            }
        }

        @Override
        public void begin(Order.Begin it) {
            begun = true;
        }

        @Override
        public void end(Order.End it) {
            over = true;
        }

        /** Three sweeps that are clearly worse: the hand turns the padder back, more slowly. */
        @Override
        public void say(Order.Say it) {
            if (it.what().at(tNanos) instanceof Work.Swept swept) {
                worse = swept.belowBestDb() < -0.3 ? worse + 1 : 0;
                if (worse == 3) {
                    turning = -turning / 2;
                }
            }
        }

        @Override
        public void level(Order.Level it) {
            throw new AssertionError("this plan asks for no check");
        }

        @Override
        public void finish(Order.Finish it) {
            over = true;
        }
    }
}
