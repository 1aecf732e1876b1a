package org.slugpeak.bridge.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.core.plan.IntermediateFrequency;

/** Reads what a plan says of its intermediate frequencies. Immutable; any thread may use it. */
final class IntermediatesReader {

    private static final String KEY = "if-kHz";

    private final OptionalDouble givenHz;

    /** With the one that the user gave beside the plan, Hz. */
    IntermediatesReader(OptionalDouble givenHz) {
        this.givenHz = givenHz;
    }

    List<IntermediateFrequency> read(Section top) {
        if (top.is(KEY, "ask")) {
            return asked(top);
        }
        List<IntermediateFrequency> written = top.isTable(KEY) ? named(top) : unnamed(top);
        if (givenHz.isPresent() && written.stream().noneMatch(each -> each.hz() == givenHz.getAsDouble())) {
            top.problem(
                    KEY,
                    "this plan is for its own intermediate frequency, not for that of --if: leave --if away,"
                            + " or change the plan");
        }
        return written;
    }

    private List<IntermediateFrequency> asked(Section top) {
        if (givenHz.isEmpty()) {
            top.problem(
                    KEY,
                    "this plan leaves the intermediate frequency open: give it with --if, for example" + " --if 455");
            return List.of(IntermediateFrequency.of(1));
        }
        return List.of(IntermediateFrequency.of(givenHz.getAsDouble()));
    }

    private static List<IntermediateFrequency> unnamed(Section top) {
        List<Double> written = top.numbers(KEY);
        if (!written.stream().allMatch(IntermediatesReader::isFrequency)) {
            top.problem(KEY, "'if-kHz' must be above zero");
            return List.of();
        }
        return written.stream().map(kHz -> IntermediateFrequency.of(kHz * 1e3)).toList();
    }

    /** The higher first, as a set with several conversions has them. */
    private static List<IntermediateFrequency> named(Section top) {
        List<IntermediateFrequency> found = new ArrayList<>();
        try (Section names = top.tableOrEmpty(KEY)) {
            for (String name : names.keys()) {
                read(names, name).ifPresent(found::add);
            }
        }
        if (found.isEmpty()) {
            top.problem(KEY, "'if-kHz' names no frequency: { first = 1600, second = 455 }, or the number alone");
        }
        found.sort(Comparator.comparingDouble(IntermediateFrequency::hz).reversed());
        return found;
    }

    private static Optional<IntermediateFrequency> read(Section names, String name) {
        OptionalDouble kHz = names.positive(name);
        if (kHz.isEmpty()) {
            return Optional.empty();
        }
        if (!isFrequency(kHz.getAsDouble())) {
            names.problem(name, "'" + name + "' is too high for a frequency in kHz");
            return Optional.empty();
        }
        return Optional.of(new IntermediateFrequency(name, kHz.getAsDouble() * 1e3));
    }

    private static boolean isFrequency(double kHz) {
        return kHz > 0 && Double.isFinite(kHz * 1e3);
    }
}
