package org.slugpeak.bridge.frame;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.instrument.DecoderFactory;
import org.slugpeak.bridge.instrument.DecoderProvider;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.Checksum;
import org.slugpeak.bridge.toml.Section;

/** Reads the {@code [frame]} table of a description. Stateless; any thread may use it. */
public final class FrameLanguage implements DecoderProvider {

    private static final int LONGEST_INTERVAL_MILLIS = 60_000;
    private static final int USUAL_PATIENCE_MILLIS = 1_000;
    private static final int MOST_BYTES = 256;

    private static final Map<String, Optional<ParityView>> PARITIES = Map.of(
            "none", Optional.empty(),
            "odd", Optional.of(new ParityView(true)),
            "even", Optional.of(new ParityView(false)));

    private static final Map<String, Checksum> CHECKSUMS = Map.of(
            "sum-8", Checksum.SUM_8,
            "sum-16", Checksum.SUM_16,
            "xor", Checksum.XOR,
            "crc-8", Checksum.CRC_8,
            "crc-16-ccitt", Checksum.CRC_16_CCITT);

    /** For the service loader. */
    public FrameLanguage() {}

    @Override
    public String language() {
        return "frame";
    }

    @Override
    public DecoderFactory read(Section section) {
        FrameFormat format = format(section);
        return setting -> {
            if (setting.rangeVolts().isPresent()) {
                throw new BadConfiguration("the range of " + format.title()
                        + " cannot be set from here: set it on the meter and leave --range out");
            }
            return new FrameDecoder(format, setting);
        };
    }

    /** The format that a table describes; for tests of single frames as well. */
    static FrameFormat format(Section section) {
        BytePattern pattern = pattern(section);
        FrameParts parts = new FrameParts(pattern.length());
        return new FrameFormat(
                section.text("title").orElse("a meter that sends frames"),
                pattern,
                section.choice("parity-in-bit-7", PARITIES, Optional.empty()),
                parts.number(section),
                parts.flags(section),
                parts.tables(section),
                section.table("checksum").map(table -> checksum(table, pattern.length())),
                section.flag("sent-twice", false),
                new FrameAsking(
                        section.text("ask").orElse(""),
                        nanos(section, "ask-interval-ms", 0),
                        nanos(section, "patience-ms", USUAL_PATIENCE_MILLIS)));
    }

    private static BytePattern pattern(Section section) {
        String written = section.requiredText("bytes");
        Optional<BytePattern> pattern = BytePattern.parse(written.isEmpty() ? "??" : written);
        if (pattern.isEmpty() || pattern.get().length() > MOST_BYTES) {
            section.problem(
                    "bytes",
                    "'bytes' must be what each byte is, in two hexadecimal digits or question marks, for"
                            + " example \"02 3? ?? 0D\", of " + MOST_BYTES + " bytes at most");
            return BytePattern.parse("??").orElseThrow();
        }
        return pattern.get();
    }

    private static FrameFormat.FrameChecksum checksum(Section table, int length) {
        try (Section section = table) {
            section.requiredText("kind");
            int from = section.whole("from", 0, length - 1, 0);
            int to = section.requiredWhole("to", from, length - 1) + 1;
            Bits at = FrameParts.bits(section, "at", section.requiredText("at"), length);
            return new FrameFormat.FrameChecksum(section.choice("kind", CHECKSUMS, Checksum.XOR), from, to, at);
        }
    }

    private static long nanos(Section section, String key, int usual) {
        return TimeUnit.MILLISECONDS.toNanos(section.whole(key, 0, LONGEST_INTERVAL_MILLIS, usual));
    }
}
