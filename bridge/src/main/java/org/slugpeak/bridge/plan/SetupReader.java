package org.slugpeak.bridge.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.core.level.MeterPoint;
import org.slugpeak.core.plan.AvcLine;
import org.slugpeak.core.plan.Band;
import org.slugpeak.core.plan.HighTension;
import org.slugpeak.core.plan.IntermediateFrequency;
import org.slugpeak.core.plan.LevelRange;
import org.slugpeak.core.plan.Particulars;
import org.slugpeak.core.plan.Setup;

/** Reads how generator, set and meter stand: what a step does not say is what its stage says. Immutable; any thread may use it. */
final class SetupReader {

    private final List<IntermediateFrequency> intermediates;
    private final Map<String, IntermediateFrequency> byName;
    private final Map<String, Band> bands;

    SetupReader(List<IntermediateFrequency> intermediates, List<Band> bands) {
        this.intermediates = intermediates;
        this.byName = intermediates.stream()
                .filter(each -> !each.name().isEmpty())
                .collect(Collectors.toMap(IntermediateFrequency::name, Function.identity()));
        this.bands = bands.stream().collect(Collectors.toMap(Band::name, Function.identity(), (first, again) -> first));
    }

    Setup setup(Section section, Optional<Setup> common) {
        OptionalDouble dialHz = hertz(section.positive("dial-kHz"));
        boolean dialGiven = dialHz.isPresent() || section.has("dial");
        Particulars particulars = particulars(section, common.map(Setup::particulars));
        return new Setup(
                generatorHz(section, common, particulars.intermediate()),
                text(section, "modulation", common.map(Setup::modulation)),
                text(section, "inject", common.map(Setup::injection)),
                text(section, "dummy", common.map(Setup::dummyAntenna)),
                dialGiven ? dialHz : common.map(Setup::dialHz).orElse(OptionalDouble.empty()),
                dialGiven
                        ? section.text("dial").orElse("")
                        : common.map(Setup::dial).orElse(""),
                text(section, "meter", common.map(Setup::meterPoint)),
                level(section)
                        .or(() -> common.filter(it -> isOfThePoint(it, particulars))
                                .flatMap(Setup::level)),
                highTension(section, common.map(Setup::highTension)),
                particulars);
    }

    private Particulars particulars(Section section, Optional<Particulars> common) {
        return new Particulars(
                named(section, "band", bands, "this plan has no [[band]] to name")
                        .or(() -> common.flatMap(Particulars::band)),
                named(
                                section,
                                "if",
                                byName,
                                "this plan names no intermediate frequency: if-kHz = { FM = 10700, AM = 460 }")
                        .or(() -> common.flatMap(Particulars::intermediate))
                        .or(this::theOnlyOne),
                section.flag(
                        "generator-measured",
                        common.isPresent() && common.get().generatorMeasured() && !section.has("generator-kHz")),
                point(section, common.flatMap(Particulars::point)),
                avc(section).or(() -> common.flatMap(Particulars::avc)));
    }

    private Optional<IntermediateFrequency> theOnlyOne() {
        return intermediates.size() == 1 ? Optional.of(intermediates.get(0)) : Optional.empty();
    }

    private static <T> Optional<T> named(Section section, String key, Map<String, T> known, String ifNone) {
        if (!section.has(key)) {
            return Optional.empty();
        }
        if (known.isEmpty()) {
            section.problem(key, ifNone);
            return Optional.empty();
        }
        return Optional.of(section.choice(key, known, known.values().iterator().next()));
    }

    /** What a stage says of its point says nothing of another one that a step names. */
    private static Optional<MeterPoint> point(Section section, Optional<MeterPoint> common) {
        if (section.has("meter-point")) {
            return Optional.of(section.choice("meter-point", Words.POINTS, MeterPoint.DETECTOR));
        }
        return section.has("meter") ? Optional.empty() : common;
    }

    private static Optional<AvcLine> avc(Section section) {
        OptionalDouble volts = section.number("avc-clamp-V");
        if (volts.isEmpty()) {
            return Optional.empty();
        }
        if (!(AvcLine.LOWEST_VOLTS <= volts.getAsDouble() && volts.getAsDouble() <= 0)) {
            section.problem(
                    "avc-clamp-V",
                    "'avc-clamp-V' must be from " + WrittenNumber.of(AvcLine.LOWEST_VOLTS)
                            + " to 0 (0: tied to the chassis), not " + WrittenNumber.of(volts.getAsDouble()));
            return Optional.empty();
        }
        return Optional.of(AvcLine.heldAt(volts.getAsDouble()));
    }

    /** What a stage says of its point says nothing of another one that a step names: that may stand at high tension again. */
    private static HighTension highTension(Section section, Optional<HighTension> common) {
        HighTension stage = common.orElse(HighTension.POSSIBLE);
        return new HighTension(
                section.flag("inject-ht", section.has("inject") || stage.atInjection()),
                section.flag("meter-ht", section.has("meter") || stage.atMeter()));
    }

    private static String text(Section section, String key, Optional<String> common) {
        return section.text(key).or(() -> common).orElse("");
    }

    private static OptionalDouble generatorHz(
            Section section, Optional<Setup> common, Optional<IntermediateFrequency> intermediate) {
        if (section.is("generator-kHz", "IF")) {
            if (intermediate.isEmpty()) {
                section.problem(
                        "generator-kHz",
                        "\"IF\" is clear only in a plan with one 'if-kHz', or where 'if' says which: give it, or"
                                + " the number");
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(intermediate.get().hz());
        }
        return section.has("generator-kHz")
                ? hertz(section.positive("generator-kHz"))
                : common.map(Setup::generatorHz).orElse(OptionalDouble.empty());
    }

    static OptionalDouble hertz(OptionalDouble kHz) {
        return kHz.isPresent() ? OptionalDouble.of(kHz.getAsDouble() * 1e3) : kHz;
    }

    /** A window is that of a point: a step that names another kind of point has none of its stage. */
    private static boolean isOfThePoint(Setup common, Particulars own) {
        return common.particulars().point().equals(own.point());
    }

    private static Optional<LevelRange> level(Section section) {
        String unit = section.text("level-unit").orElse(LevelRange.VOLTS);
        List<Double> ends = section.numbers("level");
        if (!section.has("level") || ends.isEmpty()) {
            return Optional.empty();
        }
        if (ends.size() != 2 || !(0 < ends.get(0) && ends.get(0) < ends.get(1))) {
            section.problem("level", "'level' must be two numbers above zero, the lower first: [0.5, 1.5]");
            return Optional.empty();
        }
        return Optional.of(new LevelRange(ends.get(0), ends.get(1), unit));
    }
}
