package org.slugpeak.bridge.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.receiver.IfPerformance;
import org.slugpeak.core.session.Advice;

/**
 * What a demonstration came to, as the simulation knows it; nothing here was measured by the tool, but beside the fault that was
 * seeded stands what the tool said. Immutable; any thread may
 * use it.
 *
 * @param steps what each turn of an adjuster brought, in order
 * @param before the set as it came
 * @param after the set as it is left
 * @param leftDb what the set as it is left has less than the best there is
 * @param fault what was seeded
 * @param suspicions what the tool said was possibly wrong, in order
 */
public record DemoOutcome(
        List<Step> steps,
        IfPerformance before,
        IfPerformance after,
        double leftDb,
        Optional<Fault> fault,
        List<Advice> suspicions) {

    public DemoOutcome {
        steps = List.copyOf(steps);
        suspicions = List.copyOf(suspicions);
    }

    /**
     * One adjuster, set once. Immutable; any thread may use it.
     *
     * @param adjuster its name
     * @param gainDb what setting it brought
     * @param leftDb what this adjuster alone could still bring when the hand left it
     */
    public record Step(String adjuster, double gainDb, double leftDb) {}

    /**
     * The table for the screen.
     *
     * @return lines without colour, no longer than 72 characters
     */
    public List<String> table() {
        List<String> lines = new ArrayList<>();
        lines.add("What the simulation itself knows, which slugpeak was never told:");
        lines.add(String.format(Locale.ROOT, "%-28s %10s %14s", "adjuster", "gained", "left in it"));
        for (Step step : steps) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%-28s %+7.2f dB %11.2f dB",
                    step.adjuster(),
                    Rounded.to(step.gainDb(), 2),
                    Rounded.to(step.leftDb(), 2)));
        }
        lines.add("");
        lines.add(String.format(Locale.ROOT, "%-28s %10s %14s", "IF strip", "before", "after"));
        lines.add(row("for 1 V at the detector, uV", before.sensitivityVolts() * 1e6, after.sensitivityVolts() * 1e6));
        lines.add(row("strongest at, kHz", before.strongestHz() / 1e3, after.strongestHz() / 1e3));
        lines.add(row("6 dB width, kHz", before.widthHz() / 1e3, after.widthHz() / 1e3));
        lines.add(row("6 dB centre, kHz", before.centreHz() / 1e3, after.centreHz() / 1e3));
        lines.add("");
        lines.add(String.format(Locale.ROOT, "left on the table: %.2f dB", Math.max(0, leftDb)));
        fault.ifPresent(it -> lines.addAll(verdict(it)));
        return lines;
    }

    private List<String> verdict(Fault seeded) {
        List<String> lines = new ArrayList<>();
        String meant = Seeded.meantBy(seeded).topic();
        Optional<Advice> right =
                suspicions.stream().filter(it -> it.topic().equals(meant)).findFirst();
        lines.add("seeded: " + seeded.code() + "; "
                + right.map(it -> "slugpeak said at " + minutes(it.tNanos()) + ":")
                        .orElse("slugpeak missed it."));
        right.ifPresent(it -> lines.addAll(quoted(it)));
        for (Advice wrong : suspicions) {
            if (!wrong.topic().equals(meant)) {
                lines.add("slugpeak also said, wrongly, at " + minutes(wrong.tNanos()) + ":");
                lines.addAll(quoted(wrong));
            }
        }
        return lines;
    }

    /** What was said, in lines that a narrow window holds. */
    private static List<String> quoted(Advice advice) {
        List<String> parts =
                advice.text().replaceAll("(.{1,68})( |$)", "$1\n").lines().toList();
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            lines.add((i == 0 ? "  '" : "   ") + parts.get(i) + (i == parts.size() - 1 ? "'" : ""));
        }
        return lines;
    }

    /** Minutes and seconds from the first reading. */
    private static String minutes(long tNanos) {
        long seconds = Math.round(tNanos / 1e9);
        return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }

    private static String row(String what, double from, double to) {
        return String.format(Locale.ROOT, "%-28s %10.1f %14.1f", what, from, to);
    }
}
