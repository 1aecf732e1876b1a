package org.slugpeak.cli.report;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.slugpeak.cli.words.ComparePhrase;
import org.slugpeak.cli.words.ReportPhrase;
import org.slugpeak.core.curve.Estimate;
import org.slugpeak.core.reading.Rounded;

/** A comparison as page and plain text both say it. All methods are pure. */
final class ComparisonTables {

    private ComparisonTables() {}

    /** The sentences above the tables. */
    static List<String> lines(Comparison it, ZoneId zone) {
        List<String> lines = new ArrayList<>();
        lines.add(ComparePhrase.FROM.of(it.then().name(), Summary.date(it.then(), zone)));
        lines.add(ComparePhrase.TO.of(it.now().name(), Summary.date(it.now(), zone)));
        Stream.of(it.then(), it.now())
                .filter(story -> !story.ending().isEmpty())
                .forEach(story -> lines.add(ReportPhrase.NOTE.of(story.name() + ": " + story.ending())));
        it.left().forEach(why -> lines.add(ReportPhrase.NOTE.of(why)));
        return lines;
    }

    /** One for each part that both have something of. */
    static List<ReportTable> of(Comparison it) {
        List<ReportTable> tables = new ArrayList<>();
        tables.add(table(ComparePhrase.ADJUSTERS, ComparePhrase.ADJUSTER, it, Compared.Part.ADJUSTER));
        tables.add(table(ComparePhrase.DIALS, ComparePhrase.POINT, it, Compared.Part.DIAL));
        tables.add(table(ComparePhrase.CURVES, ComparePhrase.CURVE, it, Compared.Part.CURVE));
        tables.add(table(ComparePhrase.SHEETS, ComparePhrase.POINT, it, Compared.Part.SHEET));
        tables.removeIf(ReportTable::isEmpty);
        return tables;
    }

    /** How the uncertainty came about; empty where nothing was compared. */
    static Optional<String> how(Comparison it) {
        return it.figures().isEmpty() ? Optional.empty() : Optional.of(ComparePhrase.HOW.of());
    }

    private static ReportTable table(ComparePhrase title, ComparePhrase first, Comparison it, Compared.Part part) {
        List<List<String>> rows = it.figures().stream()
                .filter(each -> each.part() == part)
                .map(ComparisonTables::row)
                .toList();
        return new ReportTable(
                title.of(),
                List.of(
                        first.of(),
                        ReportPhrase.WHAT.of(),
                        ComparePhrase.THEN.of(),
                        ComparePhrase.NOW.of(),
                        ComparePhrase.CHANGE.of(),
                        ComparePhrase.UNCERTAINTY.of(),
                        ComparePhrase.SAID.of()),
                rows);
    }

    private static List<String> row(Compared it) {
        return List.of(
                it.name(),
                it.quantity(),
                value(it, it.then()),
                value(it, it.now()),
                it.change().stream()
                        .mapToObj(change -> signed(it, change))
                        .findFirst()
                        .orElse(""),
                Double.isFinite(it.uncertainty()) ? plain(it, it.uncertainty()) : "",
                verdict(it).of());
    }

    private static String value(Compared it, Optional<Estimate> figure) {
        return figure.map(one -> isLevel(it.part()) ? signed(it, one.value()) : plain(it, one.value()))
                .orElse("");
    }

    private static String signed(Compared it, double value) {
        return isFixed(it)
                ? String.format(Locale.ROOT, "%+.2f %s", Rounded.to(value, 2), it.unit())
                : Numbers.withUnit(value, it.unit());
    }

    private static String plain(Compared it, double value) {
        return isFixed(it)
                ? String.format(Locale.ROOT, "%.2f %s", value, it.unit())
                : Numbers.withUnit(value, it.unit());
    }

    /** Decibels and kilohertz have two places; what is left of a zero is as large as the unit makes it. */
    private static boolean isFixed(Compared it) {
        return it.unit().startsWith("dB") || it.unit().equals("kHz");
    }

    /** Gains and errors have a sign; frequencies, inputs and ratios do without. */
    private static boolean isLevel(Compared.Part part) {
        return part == Compared.Part.ADJUSTER || part == Compared.Part.DIAL;
    }

    private static ComparePhrase verdict(Compared it) {
        return switch (it.verdict()) {
            case UNCHANGED -> ComparePhrase.UNCHANGED;
            case CHANGED -> ComparePhrase.CHANGED;
            case UNKNOWN -> ComparePhrase.CANNOT_BE_SAID;
            case ONLY_THEN -> ComparePhrase.ONLY_THEN;
            case ONLY_NOW -> ComparePhrase.ONLY_NOW;
        };
    }
}
