package org.slugpeak.bridge.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.bridge.toml.TomlFile;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.Chassis;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.RepeatRule;
import org.slugpeak.core.plan.Stage;

/** Makes a plan of a text. Immutable; any thread may use it. */
final class PlanReader {

    private static final int MOST_ROUNDS = 50;

    private final String file;
    private final OptionalDouble intermediateHz;

    PlanReader(String file, OptionalDouble intermediateHz) {
        this.file = file;
        this.intermediateHz = intermediateHz;
    }

    Plan read(String text) throws BadConfiguration {
        return TomlFile.read(file, "plan", text, this::plan).orElseThrow();
    }

    /** Empty only where mistakes have been noted, so that nobody sees it. */
    private Optional<Plan> plan(Section top) {
        String name = top.requiredText("name");
        List<Double> intermediates = intermediates(top);
        Chassis chassis = top.choice("chassis", Words.CHASSIS, Chassis.UNKNOWN);
        List<Band> bands =
                top.tables("band").stream().flatMap(each -> band(each).stream()).toList();
        List<String> valves = top.texts("valves", List.of());
        List<String> notes = top.texts("notes", List.of());
        StepReader steps = new StepReader(intermediates);
        List<Stage> stages = new ArrayList<>();
        for (Section each : top.tables("stage")) {
            stage(each, steps).ifPresent(stages::add);
        }
        if (!top.has("stage")) {
            top.problem("stage", "a plan needs at least one [[stage]] with its adjusters");
        }
        return stages.isEmpty()
                ? Optional.empty()
                : Optional.of(new Plan(name, chassis, valves, intermediates, bands, stages, notes));
    }

    private List<Double> intermediates(Section top) {
        if (top.is("if-kHz", "ask")) {
            if (intermediateHz.isEmpty()) {
                top.problem(
                        "if-kHz",
                        "this plan leaves the intermediate frequency open: give it with --if, for example"
                                + " --if 455");
                return List.of(1.0);
            }
            return List.of(intermediateHz.getAsDouble());
        }
        List<Double> written =
                top.numbers("if-kHz").stream().map(kHz -> kHz * 1e3).toList();
        if (written.stream().anyMatch(hz -> !(hz > 0))) {
            top.problem("if-kHz", "'if-kHz' must be above zero");
        }
        if (intermediateHz.isPresent() && !written.contains(intermediateHz.getAsDouble())) {
            top.problem(
                    "if-kHz",
                    "this plan is for its own intermediate frequency, not for that of --if: leave --if away,"
                            + " or change the plan");
        }
        return written;
    }

    private static Optional<Band> band(Section section) {
        try (section) {
            String name = section.requiredText("name");
            OptionalDouble low = section.positive("from-kHz");
            OptionalDouble high = section.positive("to-kHz");
            if (low.isEmpty() || high.isEmpty() || low.getAsDouble() >= high.getAsDouble()) {
                section.problem("from-kHz", "a band needs from-kHz and to-kHz, the lower first");
                return Optional.empty();
            }
            return Optional.of(new Band(name, low.getAsDouble() * 1e3, high.getAsDouble() * 1e3));
        }
    }

    private static Optional<Stage> stage(Section section, StepReader reader) {
        try (section) {
            String name = section.requiredText("name");
            RepeatRule repeat = repeat(section);
            var steps = reader.steps(section);
            return steps.isEmpty() ? Optional.empty() : Optional.of(new Stage(name, steps, repeat));
        }
    }

    private static RepeatRule repeat(Section section) {
        RepeatRule usual = RepeatRule.USUAL;
        double belowDb = section.positive("repeat-below-dB").orElse(usual.belowDb());
        return new RepeatRule(belowDb, section.whole("most-rounds", 1, MOST_ROUNDS, usual.mostRounds()));
    }
}
