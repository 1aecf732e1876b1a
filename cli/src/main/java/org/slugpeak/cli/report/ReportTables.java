package org.slugpeak.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.ReportPhrase;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.session.Adjuster;

/** What page and plain text both say, as tables. */
final class ReportTables {

    /** Kinds that belong to the course of every job and warn of nothing. */
    private static final Set<String> COURSE =
            Set.of("mark", "wrong way", "cut generator", "generator changed", "negative going", "set up", "sweep");

    private ReportTables() {}

    /** Every table of a session that has something to say, in the order of the report. */
    static List<ReportTable> of(SessionStory story) {
        List<ReportTable> tables = new ArrayList<>();
        tables.add(work(story));
        tables.add(notices(ReportPhrase.WARNINGS, story, notice -> !COURSE.contains(notice.kind())));
        tables.add(safety(story));
        tables.add(instrument(story));
        tables.removeIf(ReportTable::isEmpty);
        return tables;
    }

    /** What is known of set, job, workshop and instruments. */
    static Optional<ReportTable> facts(Facts facts) {
        List<List<String>> rows = facts.given().entrySet().stream()
                .map(each -> List.of(each.getKey().of(), each.getValue()))
                .toList();
        return Optional.of(new ReportTable(
                        ReportPhrase.FACTS.of(), List.of(ReportPhrase.WHAT.of(), ReportPhrase.TOLD.of()), rows))
                .filter(table -> !table.isEmpty());
    }

    /** What whoever gets the set must know. */
    static Optional<ReportTable> remaining(SessionStory story) {
        List<List<String>> rows = story.warnings().stream().map(List::of).toList();
        return Optional.of(new ReportTable(ReportPhrase.REMAINING.of(), List.of(ReportPhrase.WHAT.of()), rows))
                .filter(table -> !table.isEmpty());
    }

    /** What was said and done on the way, line by line: for whoever wants to follow the work. */
    static Optional<ReportTable> course(SessionStory story) {
        return Optional.of(notices(ReportPhrase.COURSE, story, notice -> COURSE.contains(notice.kind())))
                .filter(table -> !table.isEmpty());
    }

    private static ReportTable work(SessionStory story) {
        String unit = story.start().measurand().unit();
        List<List<String>> rows = new ArrayList<>();
        for (Turn turn : story.turns()) {
            rows.add(List.of(
                    Numbers.clock(turn.beginNanos()),
                    turn.adjuster(),
                    Integer.toString(turn.round()),
                    level(turn.before(), turn, unit),
                    level(turn.best(), turn, unit),
                    level(turn.after(), turn, unit),
                    Gain.signed(turn.gainDb()),
                    Double.isNaN(turn.sigmaDb()) ? "" : String.format(Locale.ROOT, "%.2f dB", turn.sigmaDb()),
                    turn.inUnit() || turn.generatorDb() == 0 ? "" : Gain.tenths(turn.generatorDb()),
                    turn.ending().map(ReportTables::word).orElseGet(ReportPhrase.LEFT::of)));
        }
        return new ReportTable(
                ReportPhrase.ADJUSTERS.of(),
                List.of(
                        ReportPhrase.AT.of(),
                        ReportPhrase.ADJUSTER.of(),
                        ReportPhrase.ROUND_COLUMN.of(),
                        ReportPhrase.BEFORE.of(),
                        ReportPhrase.BEST.of(),
                        ReportPhrase.AFTER.of(),
                        ReportPhrase.GAIN_COLUMN.of(),
                        ReportPhrase.SIGMA.of(),
                        ReportPhrase.GENERATOR_COLUMN.of(),
                        ReportPhrase.ENDING.of()),
                rows);
    }

    private static String level(double level, Turn turn, String unit) {
        return turn.inUnit() ? Numbers.withUnit(level, unit) : Gain.signed(level);
    }

    private static String word(Adjuster.Action action) {
        return (action == Adjuster.Action.SKIP ? ReportPhrase.SKIPPED : ReportPhrase.DONE).of();
    }

    /** Dial errors of all sessions, before beside after: mostly they are kept in logs of their own. */
    static Optional<ReportTable> dials(List<SessionStory> stories) {
        List<DialError> points =
                stories.stream().flatMap(story -> story.dials().stream()).toList();
        List<List<String>> rows = points.stream()
                .map(DialError::hz)
                .distinct()
                .sorted()
                .map(hz -> List.of(Numbers.kHz(hz), dialError(points, hz, false), dialError(points, hz, true)))
                .toList();
        return Optional.of(new ReportTable(
                        ReportPhrase.DIALS.of(),
                        List.of(ReportPhrase.SIGNAL.of(), ReportPhrase.BEFORE.of(), ReportPhrase.AFTER.of()),
                        rows))
                .filter(table -> !table.isEmpty());
    }

    /** Where it was taken more than once the last one counts. */
    private static String dialError(List<DialError> points, double hz, boolean after) {
        return points.stream()
                .filter(point -> point.hz() == hz && point.after() == after)
                .reduce((earlier, later) -> later)
                .map(point -> String.format(
                        Locale.ROOT,
                        "%+.1f kHz (%+.2f %%)",
                        Rounded.to(point.errorHz() / 1e3, 1),
                        Rounded.to(100 * point.errorHz() / hz, 2)))
                .orElse("");
    }

    private static ReportTable notices(ReportPhrase title, SessionStory story, Predicate<Notice> which) {
        List<List<String>> rows = story.notices().stream()
                .filter(which)
                .map(each -> List.of(Numbers.clock(each.tNanos()), each.kind(), each.text(), each.times() + " x"))
                .toList();
        return new ReportTable(
                title.of(),
                List.of(ReportPhrase.AT.of(), ReportPhrase.WHAT.of(), ReportPhrase.TOLD.of(), ReportPhrase.TIMES.of()),
                rows);
    }

    private static ReportTable safety(SessionStory story) {
        List<List<String>> rows = story.safety().stream().map(List::of).toList();
        return new ReportTable(ReportPhrase.SAFETY.of(), List.of(ReportPhrase.AS_GIVEN.of()), rows);
    }

    private static ReportTable instrument(SessionStory story) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(ReportPhrase.SOURCE.of(), story.start().source()));
        rows.add(List.of(
                ReportPhrase.MEASURED.of(),
                (story.start().measurand().quantity() + " "
                                + story.start().measurand().unit())
                        .strip()));
        rows.add(List.of(ReportPhrase.READINGS.of(), readings(story)));
        rows.add(List.of(
                ReportPhrase.SMALLEST_STEP.of(),
                Numbers.withUnit(
                        story.levels().smallestStep(), story.start().measurand().unit())));
        rows.add(List.of(ReportPhrase.UNTRUSTED.of(), untrusted(story)));
        rows.add(List.of(ReportPhrase.RECORDED_BY.of(), story.start().tool()));
        rows.removeIf(row -> row.get(1).isEmpty());
        return new ReportTable(
                ReportPhrase.INSTRUMENT.of(), List.of(ReportPhrase.WHAT.of(), ReportPhrase.TOLD.of()), rows);
    }

    private static String readings(SessionStory story) {
        long count = story.levels().count();
        double seconds = story.lengthNanos() / 1e9;
        return seconds > 0
                ? ReportPhrase.RATE.of(
                        count, Numbers.clock(story.lengthNanos()), Numbers.fourDigits((count - 1) / seconds))
                : Long.toString(count);
    }

    private static String untrusted(SessionStory story) {
        return story.levels().untrusted().entrySet().stream()
                .map(each -> each.getValue() + " " + CodeWords.of(each.getKey()))
                .collect(Collectors.joining(", "));
    }
}
