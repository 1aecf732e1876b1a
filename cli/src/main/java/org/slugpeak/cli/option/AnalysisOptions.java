package org.slugpeak.cli.option;

import java.time.Duration;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.word.Refused;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What is turned for. */
public final class AnalysisOptions {

    @Option(
            names = "--seek",
            paramLabel = "peak|dip|zero",
            converter = SeekConverter.class,
            description = {
                "peak: the greatest reading (usual).",
                "dip: the smallest, for wave traps.",
                "zero: the zero between plus and minus, for discriminators."
            })
    private Seek seek = Seek.PEAK;

    @Option(
            names = "--dwell",
            paramLabel = "SECONDS",
            defaultValue = "2",
            description =
                    "How long the reading must stay at the best before it counts as held (default ${DEFAULT-VALUE}).")
    private double dwellSeconds;

    @Option(
            names = "--steps",
            description = {
                "Each reading is the settled value of one step of a turn, an eighth say; no clock, no dwell.",
                "On standard input also: u takes the last one back, r begins the next adjuster, b the same",
                "again, k skips it, q ends. Usual where values are typed at a terminal."
            })
    private boolean steps;

    /** The settings for the analysis; values typed at a terminal are always steps. */
    public AnalysisSettings settings(boolean typed) {
        return new AnalysisSettings(peakSettings(), steps || typed);
    }

    private PeakSettings peakSettings() {
        if (!(dwellSeconds >= 0.1 && dwellSeconds <= 60)) {
            throw new TypeConversionException("--dwell takes 0.1 to 60 seconds, not " + dwellSeconds);
        }
        return new PeakSettings(seek, Duration.ofNanos(Math.round(dwellSeconds * 1e9)));
    }

    /** Reads the word after {@code --seek}. */
    static final class SeekConverter implements ITypeConverter<Seek> {
        @Override
        public Seek convert(String word) {
            try {
                return Seek.ofCode(word);
            } catch (Refused e) {
                throw new TypeConversionException(e.reason());
            }
        }
    }
}
