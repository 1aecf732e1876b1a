package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.Particulars;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.plan.TuningElement;
import org.slugpeak.core.receiver.OscillatorSide;

/**
 * Plans of sets that nobody has built: an IF from 50 kHz to 11 MHz with one to three transformers, some of them damped, and what may
 * follow: trap, a range with its oscillator above or below, tuned by gang or slugs, fed at an aerial or a loop, and an FM strip with
 * limiter and discriminator or with a ratio detector.
 */
final class RandomPlans {

    /**
     * From so many times the intermediate frequency an aerial circuit is set while the gang is rocked, as it pulls the oscillator: 3
     * need none, 33 do (R6 of the reference tables for rehearsals).
     */
    private static final double ROCKED_FROM = 10;

    private final SplittableRandom random;
    private final boolean fm;
    private final boolean sound;
    private final IntermediateFrequency am;
    private final IntermediateFrequency vhf;
    private final Band band;
    private final String feed;

    private RandomPlans(long seed) {
        random = new SplittableRandom(seed);
        fm = random.nextInt(3) == 0;
        // Two intermediate frequencies lie well apart in every set.
        double span = fm ? 40 : 220;
        am = new IntermediateFrequency("AM", Math.round(50 * Math.pow(span, random.nextDouble())) * 1e3);
        vhf = new IntermediateFrequency("FM", Math.round(random.nextDouble(9500, 11000)) * 1e3);
        sound = !fm && random.nextInt(4) == 0;
        boolean below = random.nextInt(4) == 0;
        double lowHz = Math.max(150e3, (below ? 3 : 1.3) * am.hz()) * random.nextDouble(1, 4);
        band = new Band(
                "A",
                lowHz,
                lowHz * random.nextDouble(1.6, 3),
                Optional.of(below ? OscillatorSide.BELOW : OscillatorSide.ABOVE),
                random.nextInt(4) == 0 ? TuningElement.PERMEABILITY : TuningElement.CAPACITOR);
        feed = random.nextInt(3) == 0 ? "loop of two turns, 60 cm away" : "antenna";
    }

    static Plan of(long seed) {
        return new RandomPlans(seed).plan(seed);
    }

    private Plan plan(long seed) {
        List<Stage> stages = new ArrayList<>();
        stages.add(new Stage("IF", windings(), RepeatRule.USUAL));
        if (random.nextBoolean()) {
            PlanStep trap = step("trap", Goal.DIP, setup(am.hz(), feed, middle(), meter(), am));
            stages.add(new Stage("trap", List.of(trap), new RepeatRule(0.2, 1)));
        }
        if (random.nextInt(4) > 0) {
            stages.add(new Stage("oscillator", oscillator(), RepeatRule.USUAL));
            stages.add(new Stage("aerial", signal(), new RepeatRule(0.2, 2)));
        }
        if (fm) {
            stages.add(new Stage("FM IF", random.nextBoolean() ? limited() : ratioDetected(), RepeatRule.USUAL));
        }
        return new Plan(
                "random " + seed,
                Chassis.TRANSFORMER,
                List.of(),
                fm ? List.of(vhf, am) : List.of(am),
                List.of(band),
                stages,
                List.of());
    }

    private MeterPoint meter() {
        if (sound) {
            return MeterPoint.VOICE_COIL;
        }
        return random.nextBoolean() ? MeterPoint.DETECTOR : MeterPoint.AVC;
    }

    private List<PlanStep> windings() {
        List<PlanStep> steps = new ArrayList<>();
        MeterPoint point = meter();
        Setup setup = setup(am.hz(), "converter grid", OptionalDouble.empty(), point, am);
        for (int can = random.nextInt(1, 4); can > 0; can--) {
            boolean damped = random.nextInt(4) == 0;
            String top = "T" + can + " top";
            String bottom = "T" + can + " bottom";
            steps.add(damped ? damped(top, bottom, setup) : step(top, Goal.PEAK, setup));
            steps.add(damped ? damped(bottom, top, setup) : step(bottom, Goal.PEAK, setup));
        }
        return steps;
    }

    /** Resistor for 1.5 times critical coupling with Q 70 (60 from 2 MHz on) and the capacitors of the tables for rehearsals. */
    private PlanStep damped(String adjuster, String partner, Setup setup) {
        double hz = am.hz();
        double farad = hz < 200e3 ? 500e-12 : hz < 350e3 ? 150e-12 : hz < 5e6 ? 110e-12 : 47e-12;
        Damping damping = Damping.suggested(partner, hz < 2e6 ? 70 : 60, 1.5, 1 / (2 * Math.PI * hz * farad));
        return new PlanStep(adjuster, Goal.PEAK, setup, false, Optional.of(damping), Acceptance.MAXIMUM, List.of());
    }

    private List<PlanStep> oscillator() {
        MeterPoint point = meter();
        boolean padded = band.tuning() == TuningElement.CAPACITOR && random.nextBoolean();
        Setup low = setup(nearBottom(), feed, OptionalDouble.of(nearBottom()), point, am);
        PlanStep second = padded && random.nextBoolean()
                ? rocked("padder", Goal.ON_DIAL, low)
                : step(padded ? "padder" : "oscillator slug", Goal.ON_DIAL, low);
        Setup high = setup(nearTop(), feed, OptionalDouble.of(nearTop()), point, am);
        return List.of(step("oscillator trimmer", Goal.ON_DIAL, high), second);
    }

    private List<PlanStep> signal() {
        MeterPoint point = meter();
        List<PlanStep> steps = new ArrayList<>();
        steps.add(received("aerial trimmer", nearTop(), point));
        if (random.nextBoolean()) {
            steps.add(received("aerial slug", nearBottom(), point));
        }
        return steps;
    }

    private PlanStep received(String adjuster, double hz, MeterPoint point) {
        Setup setup = setup(hz, feed, OptionalDouble.of(hz), point, am);
        return hz > ROCKED_FROM * am.hz() ? rocked(adjuster, Goal.PEAK, setup) : step(adjuster, Goal.PEAK, setup);
    }

    /** The primary before a discriminator shows nothing at the limiter's grid: it is not set here. */
    private List<PlanStep> limited() {
        List<PlanStep> steps = new ArrayList<>();
        cans(steps, MeterPoint.LIMITER_GRID);
        steps.add(zero());
        return steps;
    }

    private List<PlanStep> ratioDetected() {
        List<PlanStep> steps = new ArrayList<>();
        steps.add(step("T9 bottom", Goal.PEAK, vhf(MeterPoint.RATIO_DETECTOR)));
        steps.add(zero());
        cans(steps, MeterPoint.RATIO_DETECTOR);
        return steps;
    }

    private void cans(List<PlanStep> steps, MeterPoint point) {
        for (int can = random.nextInt(7, 9); can >= 7; can--) {
            steps.add(step("T" + can + " top", Goal.PEAK, vhf(point)));
            steps.add(step("T" + can + " bottom", Goal.PEAK, vhf(point)));
        }
    }

    private PlanStep zero() {
        return step("T9 top", Goal.ZERO, vhf(MeterPoint.DISCRIMINATOR));
    }

    private Setup vhf(MeterPoint point) {
        return setup(vhf.hz(), "mixer", OptionalDouble.empty(), point, vhf);
    }

    private OptionalDouble middle() {
        return OptionalDouble.of(Math.sqrt(band.lowHz() * band.highHz()));
    }

    private double nearTop() {
        return band.highHz() / 1.1;
    }

    private double nearBottom() {
        return band.lowHz() * 1.1;
    }

    private Setup setup(
            double hz, String injection, OptionalDouble dialHz, MeterPoint point, IntermediateFrequency intermediate) {
        return new Setup(
                OptionalDouble.of(hz),
                point == MeterPoint.VOICE_COIL ? "400 Hz, 30 %" : "none",
                injection,
                "",
                dialHz,
                "",
                point.code(),
                Optional.empty(),
                new HighTension(false, false),
                new Particulars(
                        Optional.of(band), Optional.of(intermediate), false, Optional.of(point), Optional.empty()));
    }

    private static PlanStep step(String adjuster, Goal goal, Setup setup) {
        return new PlanStep(adjuster, goal, setup, false, Optional.empty(), Acceptance.MAXIMUM, List.of());
    }

    private static PlanStep rocked(String adjuster, Goal goal, Setup setup) {
        return new PlanStep(adjuster, goal, setup, true, Optional.empty(), Acceptance.MAXIMUM, List.of());
    }
}
