package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.slugpeak.core.reading.Condition;
import org.slugpeak.core.session.Adjuster;

/** What page and plain text both say, as tables. */
final class ReportTables {

    private ReportTables() {}

    /** Every table of a session that has something to say, in the order of the report. */
    static List<ReportTable> of(SessionStory story) {
        List<ReportTable> tables = new ArrayList<>();
        tables.add(work(story));
        tables.add(dials(story));
        tables.add(notices(story));
        tables.add(safety(story));
        tables.add(instrument(story));
        tables.removeIf(ReportTable::isEmpty);
        return tables;
    }

    private static ReportTable work(SessionStory story) {
        String unit = story.start().measurand().unit();
        List<List<String>> rows = new ArrayList<>();
        for (Turn turn : story.turns()) {
            rows.add(List.of(
                    Numbers.clock(turn.beginNanos()),
                    turn.adjuster(),
                    Integer.toString(turn.round()),
                    Numbers.withUnit(turn.before(), unit),
                    Numbers.withUnit(turn.best(), unit),
                    Numbers.withUnit(turn.after(), unit),
                    Decibels.signed(turn.gainDb()),
                    Double.isNaN(turn.sigmaDb()) ? "" : String.format(Locale.ROOT, "%.2f dB", turn.sigmaDb()),
                    turn.ending().map(ReportTables::word).orElse("left")));
        }
        return new ReportTable(
                "Adjusters",
                List.of("at", "adjuster", "round", "before", "best", "after", "gain", "+- (1 sigma)", ""),
                rows);
    }

    private static String word(Adjuster.Action action) {
        return action == Adjuster.Action.SKIP ? "skipped" : "done";
    }

    private static ReportTable dials(SessionStory story) {
        List<List<String>> rows = story.dials().stream()
                .map(each -> List.of(
                        Numbers.kHz(each.hz()),
                        each.after() ? "after" : "before",
                        String.format(Locale.ROOT, "%+.1f kHz", each.errorHz() / 1e3),
                        String.format(Locale.ROOT, "%+.2f %%", 100 * each.errorHz() / each.hz())))
                .toList();
        return new ReportTable("Dial", List.of("signal", "when", "dial is off by", ""), rows);
    }

    private static ReportTable notices(SessionStory story) {
        List<List<String>> rows = story.notices().stream()
                .map(each -> List.of(Numbers.clock(each.tNanos()), each.kind(), each.text(), each.times() + " x"))
                .toList();
        return new ReportTable("Warnings and notes", List.of("at", "what", "", "times"), rows);
    }

    private static ReportTable safety(SessionStory story) {
        List<List<String>> rows = story.safety().stream().map(List::of).toList();
        return new ReportTable("Safety answers", List.of("as given before the work"), rows);
    }

    private static ReportTable instrument(SessionStory story) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("source", story.start().source()));
        rows.add(List.of(
                "measured",
                (story.start().measurand().quantity() + " "
                                + story.start().measurand().unit())
                        .strip()));
        rows.add(List.of("readings", readings(story)));
        rows.add(List.of(
                "smallest step seen",
                Numbers.withUnit(smallestStep(story), story.start().measurand().unit())));
        rows.add(List.of("untrusted readings", untrusted(story)));
        rows.add(List.of("recorded by", story.start().tool()));
        rows.removeIf(row -> row.get(1).isEmpty());
        return new ReportTable("Instrument and its limits", List.of("", ""), rows);
    }

    private static String readings(SessionStory story) {
        int count = story.levels().size();
        double seconds = story.lengthNanos() / 1e9;
        return seconds > 0
                ? count + " in " + Numbers.clock(story.lengthNanos()) + ", " + Numbers.fourDigits((count - 1) / seconds)
                        + " a second"
                : Integer.toString(count);
    }

    private static double smallestStep(SessionStory story) {
        double smallest = Double.POSITIVE_INFINITY;
        double last = Double.NaN;
        for (LevelPoint point : story.levels()) {
            if (point.condition() != Condition.OK) {
                continue;
            }
            double step = Math.abs(point.value() - last);
            if (step > 0) {
                smallest = Math.min(smallest, step);
            }
            last = point.value();
        }
        return smallest;
    }

    private static String untrusted(SessionStory story) {
        return story.levels().stream()
                .map(LevelPoint::condition)
                .filter(condition -> !condition.isTrusted())
                .collect(Collectors.groupingBy(Condition::code, TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(each -> each.getValue() + " " + each.getKey())
                .collect(Collectors.joining(", "));
    }
}
