package org.slugpeak.bridge.scpi;

import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.instrument.DecoderFactory;
import org.slugpeak.bridge.instrument.DecoderProvider;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.toml.Section;

/** Reads the {@code [scpi]} table of a description. Stateless; any thread may use it. */
public final class ScpiLanguage implements DecoderProvider {

    private static final int SHORTEST_PATIENCE_MILLIS = 100;
    private static final int USUAL_PATIENCE_MILLIS = 5_000;
    private static final int LONGEST_MILLIS = 60_000;
    private static final List<String> USUAL_READINGS =
            List.of("READ?", "FETCh?", "MEASure:VOLTage:{function}? {range}");
    private static final Map<String, List<String>> LINE_ENDS =
            Map.of("lf", List.of("\n"), "cr", List.of("\r"), "crlf", List.of("\r\n"));

    /** LF is what the standard asks for; some hand-held meters wait for CR LF. */
    private static final List<String> USUAL_LINE_ENDS = List.of("\n", "\r\n");

    private static final Map<String, Boolean> POINTS = Map.of("point", false, "comma", true);
    private static final Map<String, Boolean> TAKEN = Map.of("first", false, "all", true);

    /** For the service loader. */
    public ScpiLanguage() {}

    @Override
    public String language() {
        return "scpi";
    }

    @Override
    public DecoderFactory read(Section section) {
        ScpiDialect dialect = new ScpiDialect(
                section.text("remote").orElse(""),
                section.text("local").orElse(""),
                section.text("configure").orElse("CONFigure:VOLTage:{function}"),
                section.text("range").orElse("VOLTage:{function}:RANGe {range}"),
                section.texts("readings", USUAL_READINGS),
                section.choice("numbers", TAKEN, false),
                section.choice("decimal", POINTS, false),
                nanos(section, "patience-ms", SHORTEST_PATIENCE_MILLIS, USUAL_PATIENCE_MILLIS),
                nanos(section, "interval-ms", 0, 0),
                section.choice("line-end", LINE_ENDS, USUAL_LINE_ENDS));
        return setting -> {
            if (setting.rangeVolts().isPresent() && dialect.range().isEmpty()) {
                throw new BadConfiguration(
                        "the range of this meter cannot be set from here: set it on the meter and leave --range out");
            }
            return new ScpiDecoder(dialect, setting);
        };
    }

    private static long nanos(Section section, String key, int least, int usual) {
        return TimeUnit.MILLISECONDS.toNanos(section.whole(key, least, LONGEST_MILLIS, usual));
    }
}
