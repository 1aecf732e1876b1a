package org.slugpeak.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.slugpeak.bridge.instrument.LinkBounds;
import org.slugpeak.bridge.source.LinkReport;

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
        lines.add(line("readings", Long.toString(report.readings())));
        lines.add(line(
                "rate",
                figure(report.perSecond(), 1, " a second")
                        + BoundText.atLeast(bounds.leastPerSecond(), report.perSecond(), 1, "")));
        lines.add(line(
                "jitter",
                figure(report.jitterSeconds(), 1e3, " ms from interval to interval")
                        + BoundText.atMost(bounds.mostJitterSeconds(), report.jitterSeconds(), 1e3, " ms")));
        lines.add(line("longest interval", figure(report.longestSeconds(), 1e3, " ms")));
        lines.add(line(
                "noise",
                figure(report.noise(), 1, unit + " (one sigma, short term)")
                        + BoundText.atMost(bounds.mostNoise(), report.noise(), 1, unit)));
        lines.add(line("resolution", figure(report.resolution(), 1, unit + " (smallest step seen)")));
        report.effectiveBits().ifPresent(bits -> lines.add(line("effective bits", bits(bits))));
        humRejectionDb.ifPresent(decibels -> lines.add(line("hum rejection", hum(decibels))));
        lines.add(line("over-range", Long.toString(report.overRange())));
        lines.add(line("no value", Long.toString(report.withoutValue())));
        lines.add(line("not readings", garbled()));
        lines.add(line("skipped", Long.toString(report.skipped())));
        lines.add(line("gaps", report.gaps() + ", link lost " + report.lost() + ", stale " + report.stale()));
        lines.add(line("range changes", report.rangeChanges() + ", restarts " + report.restarts()));
        report.perSecond().ifPresent(rate -> lines.add(line("turn no faster", speeds(rate))));
        return lines;
    }

    private String bits(double bits) {
        return String.format(Locale.ROOT, "%.1f", bits)
                + BoundText.atLeast(bounds.leastEffectiveBits(), report.effectiveBits(), 1, "");
    }

    private String hum(double decibels) {
        return String.format(Locale.ROOT, "%.0f dB or better", decibels)
                + BoundText.atLeast(bounds.leastHumRejectionDb(), humRejectionDb, 1, " dB");
    }

    private static String speeds(double rate) {
        return String.format(
                Locale.ROOT,
                "than %.2f turns a second on an IF slug, %.3f on a trimmer",
                SLUG_TURNS * rate / READINGS_ACROSS_A_PEAK,
                TRIMMER_TURNS * rate / READINGS_ACROSS_A_PEAK);
    }

    private String garbled() {
        if (report.garbledInAll() == 0) {
            return "0";
        }
        return report.garbledInAll() + " ("
                + report.garbled().entrySet().stream()
                        .map(each -> each.getKey().code() + " " + each.getValue())
                        .sorted()
                        .collect(Collectors.joining(", "))
                + ")";
    }

    private static String line(String name, String value) {
        return String.format(Locale.ROOT, "%-17s %s", name, value);
    }

    private static String figure(OptionalDouble value, double scale, String suffix) {
        return value.isPresent()
                ? String.format(Locale.ROOT, "%.4g%s", value.getAsDouble() * scale, suffix)
                : "not known";
    }
}
