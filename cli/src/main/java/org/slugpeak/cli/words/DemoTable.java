package org.slugpeak.cli.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slugpeak.bridge.sim.DemoOutcome;
import org.slugpeak.core.level.Suspicion;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.receiver.Fault;
import org.slugpeak.core.receiver.IfPerformance;
import org.slugpeak.core.session.Caution;

/** The table of what a demonstration came to. All methods are pure. */
public final class DemoTable {

    private DemoTable() {}

    /**
     * The table for the screen.
     *
     * @param outcome of the demonstration
     * @return lines without colour, no longer than 72 characters
     */
    public static List<String> lines(DemoOutcome outcome) {
        List<String> lines = new ArrayList<>();
        lines.add(Phrase.DEMO_HEAD.of());
        lines.add(head(Phrase.ADJUSTER, Phrase.GAINED, Phrase.LEFT_IN_IT));
        for (DemoOutcome.Step step : outcome.steps()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%-28s %+7.2f dB %11.2f dB",
                    step.adjuster(),
                    Rounded.to(step.gainDb(), 2),
                    Rounded.to(step.leftDb(), 2)));
        }
        lines.add("");
        lines.addAll(strip(outcome.before(), outcome.after()));
        lines.add("");
        lines.add(Phrase.LEFT_ON_TABLE.of(Math.max(0, outcome.leftDb())));
        outcome.fault().ifPresent(fault -> lines.addAll(verdict(outcome, fault)));
        return lines;
    }

    private static List<String> strip(IfPerformance before, IfPerformance after) {
        return List.of(
                head(Phrase.IF_STRIP, Phrase.BEFORE, Phrase.AFTER),
                row(Phrase.SENSITIVITY, before.sensitivityVolts() * 1e6, after.sensitivityVolts() * 1e6),
                row(Phrase.STRONGEST, before.strongestHz() / 1e3, after.strongestHz() / 1e3),
                row(Phrase.WIDTH_6_DB, before.widthHz() / 1e3, after.widthHz() / 1e3),
                row(Phrase.CENTRE_6_DB, before.centreHz() / 1e3, after.centreHz() / 1e3));
    }

    private static List<String> verdict(DemoOutcome outcome, Fault seeded) {
        List<String> lines = new ArrayList<>();
        Optional<Suspicion> meant = outcome.meant();
        Optional<Caution.Suspected> right = outcome.suspicions().stream()
                .filter(it -> meant.equals(Optional.of(it.suspicion())))
                .findFirst();
        lines.add(right.map(it -> Phrase.SEEDED_SAID.of(seeded.code(), minutes(it.tNanos())))
                .orElseGet(() -> Phrase.SEEDED_MISSED.of(seeded.code())));
        right.ifPresent(it -> lines.addAll(quoted(it)));
        for (Caution.Suspected wrong : outcome.suspicions()) {
            if (!meant.equals(Optional.of(wrong.suspicion()))) {
                lines.add(Phrase.ALSO_SAID.of(minutes(wrong.tNanos())));
                lines.addAll(quoted(wrong));
            }
        }
        return lines;
    }

    /** What was said, in lines that a narrow window holds. */
    private static List<String> quoted(Caution.Suspected said) {
        List<String> parts = new RecordSentences()
                .of(said)
                .replaceAll("(.{1,68})( |$)", "$1\n")
                .lines()
                .toList();
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

    private static String head(Phrase what, Phrase first, Phrase second) {
        return String.format(Locale.ROOT, "%-28s %10s %14s", what.of(), first.of(), second.of());
    }

    private static String row(Phrase what, double from, double to) {
        return String.format(Locale.ROOT, "%-28s %10.1f %14.1f", what.of(), from, to);
    }
}
