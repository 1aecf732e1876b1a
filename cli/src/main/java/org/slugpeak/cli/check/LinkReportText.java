package org.slugpeak.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.slugpeak.bridge.instrument.LinkBounds;
import org.slugpeak.bridge.source.LinkReport;
import org.slugpeak.cli.words.CheckPhrase;
import org.slugpeak.cli.words.CodeWords;

/** Says how sound a link is, and what that means at the bench. */
public final class LinkReportText {

    /** Ten readings while a slug crosses the middle decibel: common practice, no source. */
    private static final double READINGS_ACROSS_A_PEAK = 10;

    /** Width of the -1 dB zone in turns: IF slug, and trimmer of an antenna circuit; computed from invented sets. */
    private static final double SLUG_TURNS = 0.47;

    private static final double TRIMMER_TURNS = 0.076;

    private final LinkReport report;
    private final OptionalDouble humRejectionDb;
    private final LinkBounds bounds;
    private final String unit;

    public LinkReportText(LinkReport report, OptionalDouble humRejectionDb, LinkBounds bounds, String unit) {
        this.report = report;
        this.humRejectionDb = humRejectionDb;
        this.bounds = bounds;
        this.unit = unit.isEmpty() ? "" : " " + unit;
    }

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(line(CheckPhrase.READINGS, Long.toString(report.readings())));
        lines.add(line(
                CheckPhrase.RATE,
                figure(report.perSecond(), 1, CheckPhrase.PER_SECOND)
                        + BoundText.atLeast(bounds.leastPerSecond(), report.perSecond(), 1, "")));
        lines.add(line(
                CheckPhrase.JITTER,
                figure(report.jitterSeconds(), 1e3, CheckPhrase.BETWEEN_INTERVALS)
                        + BoundText.atMost(bounds.mostJitterSeconds(), report.jitterSeconds(), 1e3, " ms")));
        lines.add(line(CheckPhrase.LONGEST, figure(report.longestSeconds(), 1e3, CheckPhrase.MILLISECONDS)));
        lines.add(line(
                CheckPhrase.NOISE,
                figure(report.noise(), CheckPhrase.SIGMA)
                        + BoundText.atMost(bounds.mostNoise(), report.noise(), 1, unit)));
        lines.add(line(CheckPhrase.RESOLUTION, figure(report.resolution(), CheckPhrase.SMALLEST_STEP)));
        report.effectiveBits().ifPresent(bits -> lines.add(line(CheckPhrase.BITS, bits(bits))));
        humRejectionDb.ifPresent(decibels -> lines.add(line(CheckPhrase.HUM, hum(decibels))));
        lines.add(line(CheckPhrase.OVER_RANGE, Long.toString(report.overRange())));
        lines.add(line(CheckPhrase.NO_VALUE, Long.toString(report.withoutValue())));
        lines.add(line(CheckPhrase.NOT_READINGS, garbled()));
        lines.add(line(CheckPhrase.SKIPPED, Long.toString(report.skipped())));
        lines.add(line(CheckPhrase.GAPS, CheckPhrase.LOST_AND_STALE.of(report.gaps(), report.lost(), report.stale())));
        lines.add(line(CheckPhrase.RANGE_CHANGES, CheckPhrase.RESTARTS.of(report.rangeChanges(), report.restarts())));
        report.perSecond().ifPresent(rate -> lines.add(line(CheckPhrase.TURN_NO_FASTER, speeds(rate))));
        return lines;
    }

    private String bits(double bits) {
        return String.format(Locale.ROOT, "%.1f", bits)
                + BoundText.atLeast(bounds.leastEffectiveBits(), report.effectiveBits(), 1, "");
    }

    private String hum(double decibels) {
        return CheckPhrase.OR_BETTER.of(decibels)
                + BoundText.atLeast(bounds.leastHumRejectionDb(), humRejectionDb, 1, " dB");
    }

    private static String speeds(double rate) {
        return CheckPhrase.SPEEDS.of(
                SLUG_TURNS * rate / READINGS_ACROSS_A_PEAK, TRIMMER_TURNS * rate / READINGS_ACROSS_A_PEAK);
    }

    private String garbled() {
        if (report.garbledInAll() == 0) {
            return "0";
        }
        return report.garbledInAll() + " ("
                + report.garbled().entrySet().stream()
                        .map(each -> CodeWords.of(each.getKey().code()) + " " + each.getValue())
                        .sorted()
                        .collect(Collectors.joining(", "))
                + ")";
    }

    private static String line(CheckPhrase name, String value) {
        return NamedLine.of(name.of(), value);
    }

    private static String figure(OptionalDouble value, double scale, CheckPhrase phrase) {
        return value.isPresent() ? phrase.of(value.getAsDouble() * scale) : CheckPhrase.NOT_KNOWN.of();
    }

    private String figure(OptionalDouble value, CheckPhrase phrase) {
        return value.isPresent() ? phrase.of(value.getAsDouble(), unit) : CheckPhrase.NOT_KNOWN.of();
    }
}
