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

    @Option(names = "--seek", paramLabel = "peak|dip|zero", converter = SeekConverter.class)
    private Seek seek = Seek.PEAK;

    @Option(names = "--dwell", paramLabel = "SECONDS", defaultValue = "2")
    private double dwellSeconds;

    @Option(names = "--steps")
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
