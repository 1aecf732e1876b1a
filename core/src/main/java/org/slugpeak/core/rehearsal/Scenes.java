package org.slugpeak.core.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.plan.Stage;
import org.slugpeak.core.receiver.OscillatorSide;
import org.slugpeak.core.word.Refused;

/** Reads a plan step by step and says what each means for the set, or why it cannot be played. */
final class Scenes {

    /** A generator so near an intermediate frequency is meant for it; staggered circuits lie within 2 percent (made up). */
    private static final double NEAR = 0.05;

    private static final Pattern AERIAL = Pattern.compile("aerial|antenna|loop|\\brod\\b|frame");
    private static final Pattern OSCILLATOR = Pattern.compile("oscillator|\\bosc\\b");
    private static final Pattern CRYSTAL = Pattern.compile("crystal|\\bxtal");
    private static final Pattern NO_TONE = Pattern.compile("none|off|cw|unmodulated");

    private final Plan plan;
    private final List<Double> intermediatesHz;
    private final List<PlannedScene> scenes = new ArrayList<>();

    private Scenes(Plan plan) {
        this.plan = plan;
        this.intermediatesHz = plan.intermediatesHz();
    }

    static List<PlannedScene> of(Plan plan) throws Refused {
        Scenes scenes = new Scenes(plan);
        for (Stage stage : plan.stages()) {
            for (PlanStep step : stage.steps()) {
                scenes.add(stage, step);
            }
        }
        return List.copyOf(scenes.scenes);
    }

    private void add(Stage stage, PlanStep step) throws Refused {
        Setup setup = step.setup();
        OptionalDouble fed = setup.generatorHz().isPresent() ? setup.generatorHz() : setup.dialHz();
        if (fed.isEmpty()) {
            throw refused(stage, step, "has neither a generator frequency nor a dial frequency: give one");
        }
        if (intermediatesHz.isEmpty()) {
            throw refused(stage, step, "needs the intermediate frequency of the set: give 'if-kHz'");
        }
        double signalHz = fed.getAsDouble();
        OptionalDouble named = setup.particulars()
                .intermediate()
                .map(IntermediateFrequency::hz)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
        double nearestHz = named.orElseGet(() -> nearest(signalHz));
        boolean intermediate =
                Math.abs(signalHz / nearestHz - 1) < NEAR && !step.goal().isOnMark() && !setup.isTunedIn();
        Role role = role(step, intermediate, nearestHz);
        PlannedScene scene = new PlannedScene(
                stage,
                step,
                role,
                Terminals.of(step),
                signalHz,
                setup.dialHz().orElse(signalHz),
                intermediate ? nearestHz : named.orElseGet(() -> plan.intermediateHz(signalHz)),
                role == Role.TRAP
                        || !intermediate
                        || AERIAL.matcher(lower(setup.injection())).find(),
                step.oscillator().orElse(OscillatorSide.ABOVE));
        check(scene, intermediate);
        scenes.add(scene);
    }

    private double nearest(double hz) {
        return intermediatesHz.stream()
                .min((a, b) -> Double.compare(Math.abs(Math.log(a / hz)), Math.abs(Math.log(b / hz))))
                .orElseThrow();
    }

    private Role role(PlanStep step, boolean intermediate, double nearestHz) {
        return switch (step.goal()) {
            case DIP -> Role.TRAP;
            case ZERO -> Role.DISCRIMINATOR;
            case ON_DIAL -> Role.OSCILLATOR;
            case PEAK -> intermediate ? peaked(lower(step.adjuster()), nearestHz) : Role.SIGNAL;
            case CRYSTAL -> Role.CRYSTAL;
            case ZERO_BEAT -> Role.BEAT_OSCILLATOR;
        };
    }

    /** At an intermediate frequency an oscillator is that of a second conversion, where there is a lower one to convert to. */
    private Role peaked(String adjuster, double hz) {
        if (CRYSTAL.matcher(adjuster).find()) {
            return Role.CRYSTAL_LOAD;
        }
        boolean converts = intermediatesHz.stream().anyMatch(other -> other < hz);
        return converts && OSCILLATOR.matcher(adjuster).find() ? Role.SECOND_OSCILLATOR : Role.IF_WINDING;
    }

    private void check(PlannedScene scene, boolean intermediate) throws Refused {
        PlanStep step = scene.step();
        if (scene.role() == Role.DISCRIMINATOR && !intermediate) {
            throw refused(scene, "seeks a zero away from the intermediate frequency: a discriminator has none there");
        }
        if ((step.goal().movesGenerator() || step.goal().isHeard()) && !intermediate) {
            throw refused(
                    scene,
                    "seeks '" + step.goal().code()
                            + "' away from the intermediate frequency: give generator-kHz = \"IF\"");
        }
        if (step.rock() && scene.role() != Role.OSCILLATOR && scene.role() != Role.SIGNAL) {
            throw refused(scene, "rocks the gang where the dial makes no difference: leave 'rock' out");
        }
        if (scene.point() == MeterPoint.VOICE_COIL
                && !step.goal().isHeard()
                && NO_TONE.matcher(lower(step.setup().modulation())).find()) {
            throw refused(scene, "measures sound, but its generator is not modulated: give 'modulation'");
        }
        if (scene.point() == MeterPoint.DISCRIMINATOR && scene.role() != Role.DISCRIMINATOR) {
            throw refused(scene, "seeks a peak at the discriminator's output, which has a sign: give seek = \"zero\"");
        }
        for (PlannedScene before : scenes) {
            if (before.step().adjuster().equals(step.adjuster()) && before.role() != scene.role()) {
                throw refused(
                        scene,
                        "turns what is another circuit in stage '"
                                + before.stage().name() + "': name it apart");
            }
        }
    }

    private static Refused refused(Stage stage, PlanStep step, String why) {
        return new Refused("step '" + step.adjuster() + "' of stage '" + stage.name() + "' " + why);
    }

    private static Refused refused(PlannedScene scene, String why) {
        return new Refused(scene.name() + " " + why);
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
