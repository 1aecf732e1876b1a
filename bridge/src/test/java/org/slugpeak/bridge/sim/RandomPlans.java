package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.slugpeak.core.plan.Acceptance;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Goal;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;

/** Plans of sets that nobody has built: an IF from 50 kHz to 11 MHz, one to three transformers, and what may follow. */
final class RandomPlans {

    private static final List<String> DC_POINTS = List.of("detector load, DC", "AVC line, DC");

    private final SplittableRandom random;
    private final double intermediateHz;
    private final String meter;
    private final String modulation;
    private final Band band;

    private RandomPlans(long seed) {
        random = new SplittableRandom(seed);
        intermediateHz = Math.round(50 * Math.pow(220, random.nextDouble())) * 1e3;
        boolean sound = random.nextInt(4) == 0;
        meter = sound ? "voice coil" : DC_POINTS.get(random.nextInt(DC_POINTS.size()));
        modulation = sound ? "400 Hz, 30 %" : "none";
        double lowHz = Math.max(150e3, 1.3 * intermediateHz) * random.nextDouble(1, 4);
        band = new Band("A", lowHz, lowHz * random.nextDouble(1.6, 3));
    }

    static Plan of(long seed) {
        return new RandomPlans(seed).plan(seed);
    }

    private Plan plan(long seed) {
        List<Stage> stages = new ArrayList<>();
        stages.add(new Stage("IF", windings(), RepeatRule.USUAL));
        if (random.nextBoolean()) {
            stages.add(new Stage(
                    "trap",
                    List.of(step("trap", Goal.DIP, aerial(intermediateHz, "trap"), false)),
                    new RepeatRule(0.2, 1)));
        }
        if (random.nextInt(4) > 0) {
            stages.add(new Stage("oscillator", oscillator(), RepeatRule.USUAL));
            stages.add(new Stage("aerial", signal(), new RepeatRule(0.2, 2)));
        }
        return new Plan(
                "random " + seed,
                Chassis.TRANSFORMER,
                List.of(),
                List.of(IntermediateFrequency.of(intermediateHz)),
                List.of(band),
                stages,
                List.of());
    }

    private List<PlanStep> windings() {
        List<PlanStep> steps = new ArrayList<>();
        for (int can = random.nextInt(1, 4); can > 0; can--) {
            steps.add(step("T" + can + " top", Goal.PEAK, setup(intermediateHz, "converter grid", ""), false));
            steps.add(step("T" + can + " bottom", Goal.PEAK, setup(intermediateHz, "converter grid", ""), false));
        }
        return steps;
    }

    private List<PlanStep> oscillator() {
        String low = random.nextBoolean() ? "padder" : "oscillator slug";
        boolean rocked = low.equals("padder") && random.nextBoolean();
        return List.of(
                step("oscillator trimmer", Goal.ON_DIAL, aerial(nearTop(), "band"), false),
                step(low, Goal.ON_DIAL, aerial(nearBottom(), "band"), rocked));
    }

    private List<PlanStep> signal() {
        List<PlanStep> steps = new ArrayList<>();
        steps.add(step("aerial trimmer", Goal.PEAK, aerial(nearTop(), "band"), false));
        if (random.nextBoolean()) {
            steps.add(step("aerial slug", Goal.PEAK, aerial(nearBottom(), "band"), false));
        }
        return steps;
    }

    private double nearTop() {
        return band.highHz() / 1.1;
    }

    private double nearBottom() {
        return band.lowHz() * 1.1;
    }

    private Setup aerial(double hz, String where) {
        return setup(hz, "antenna", where.equals("band") ? "mark" : "quiet spot");
    }

    private Setup setup(double hz, String injection, String dial) {
        OptionalDouble dialHz = dial.equals("mark")
                ? OptionalDouble.of(hz)
                : injection.equals("antenna")
                        ? OptionalDouble.of(Math.sqrt(band.lowHz() * band.highHz()))
                        : OptionalDouble.empty();
        return new Setup(
                OptionalDouble.of(hz),
                modulation,
                injection,
                "",
                dialHz,
                dialHz.isPresent() ? "" : dial,
                meter,
                Optional.empty(),
                new HighTension(false, false));
    }

    private static PlanStep step(String adjuster, Goal goal, Setup setup, boolean rock) {
        return new PlanStep(adjuster, goal, setup, rock, Optional.empty(), Acceptance.MAXIMUM, List.of());
    }
}
