package org.slugpeak.bridge.line;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.instrument.DecoderFactory;
import org.slugpeak.bridge.instrument.DecoderProvider;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.Checksum;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.core.reading.Measurand;

/** Reads the {@code [line]} table of a description. Stateless; any thread may use it. */
public final class LineLanguage implements DecoderProvider {

    private static final int MOST_FIELDS = 64;
    private static final int LONGEST_INTERVAL_MILLIS = 60_000;
    private static final Map<String, String> LINE_ENDS = Map.of("lf", "\n", "cr", "\r", "crlf", "\r\n");
    private static final Map<String, String> SEPARATORS =
            Map.of("comma", ",", "semicolon", ";", "colon", ":", "tab", "\t", "space", " ", "spaces", "", "none", "\n");
    private static final Map<String, Double> TIME_UNITS = Map.of("s", 1e9, "ms", 1e6, "us", 1e3, "ns", 1.0);
    private static final Map<String, Checksum> CHECKSUMS =
            Map.of("xor", Checksum.XOR, "crc-8", Checksum.CRC_8, "crc-16-ccitt", Checksum.CRC_16_CCITT);

    /** For the service loader. */
    public LineLanguage() {}

    @Override
    public String language() {
        return "line";
    }

    @Override
    public DecoderFactory read(Section section) {
        LineFormat format = format(section);
        return setting -> {
            if (setting.rangeVolts().isPresent()) {
                throw new BadConfiguration("the range of " + format.title()
                        + " cannot be set from here: set it on the instrument and leave --range out");
            }
            return new LineDecoder(format);
        };
    }

    private static LineFormat format(Section section) {
        return new LineFormat(
                section.text("title").orElse("an instrument that prints lines"),
                section.choice("separator", SEPARATORS, ""),
                section.text("starts-with"),
                section.whole("value-field", 1, MOST_FIELDS, 1),
                new Measurand(
                        section.text("quantity").orElse(Measurand.UNKNOWN.quantity()),
                        section.text("unit").orElse("")),
                scale(section),
                time(section),
                section.table("flags").map(LineLanguage::flags),
                section.table("checksum").map(LineLanguage::checksum),
                section.table("start").map(LineLanguage::start),
                section.text("comment"),
                new Asking(
                        section.text("greeting").orElse(""),
                        section.text("ask").orElse(""),
                        TimeUnit.MILLISECONDS.toNanos(section.whole("ask-interval-ms", 0, LONGEST_INTERVAL_MILLIS, 0)),
                        section.choice("line-end", LINE_ENDS, "\n")));
    }

    private static Scale scale(Section section) {
        OptionalDouble factor = section.number("scale");
        if (factor.isPresent() && factor.getAsDouble() == 0) {
            section.problem("scale", "'scale' must not be 0: it is the units for one count");
        }
        return new Scale(
                factor.orElse(1),
                section.number("offset").orElse(0),
                section.number("full-scale-counts"),
                section.number("lowest-counts"));
    }

    private static Optional<TimeFormat> time(Section section) {
        double nanos = section.choice("time-unit", TIME_UNITS, 0.0);
        OptionalDouble wraps = section.number("time-wraps-at");
        if (!section.has("time-field")) {
            if (section.has("time-unit") || section.has("time-wraps-at")) {
                section.problem(
                        section.has("time-unit") ? "time-unit" : "time-wraps-at",
                        "a time stamp needs 'time-field' too: the number of the field, counted from 1");
            }
            return Optional.empty();
        }
        if (!section.has("time-unit")) {
            section.problem("time-field", "'time-field' needs 'time-unit' too: \"s\", \"ms\", \"us\" or \"ns\"");
        }
        return Optional.of(new TimeFormat(
                section.whole("time-field", 1, MOST_FIELDS, 1), nanos, wraps.orElse(Double.POSITIVE_INFINITY)));
    }

    private static FlagFormat flags(Section table) {
        try (Section section = table) {
            return new FlagFormat(
                    section.requiredWhole("field", 1, MOST_FIELDS),
                    section.text("over-range").orElse(""),
                    section.text("no-value").orElse(""),
                    section.text("skipped").orElse(""));
        }
    }

    private static ChecksumFormat checksum(Section table) {
        try (Section section = table) {
            section.requiredText("kind");
            String after = section.requiredText("after");
            if (section.has("after") && after.isEmpty()) {
                section.problem("after", "'after' must not be empty: the mark before the digits, for example \"*\"");
            }
            return new ChecksumFormat(
                    section.choice("kind", CHECKSUMS, Checksum.XOR), after, section.flag("upper-case-only", false));
        }
    }

    private static StartFormat start(Section table) {
        try (Section section = table) {
            return new StartFormat(
                    section.requiredText("starts-with"),
                    section.text("version"),
                    section.text("name-key").orElse("name"),
                    section.text("unit-key").orElse("unit"),
                    section.text("scale-key").orElse("scale"),
                    section.text("low-key").orElse("low"),
                    section.text("high-key").orElse("high"),
                    section.text("restart"));
        }
    }
}
