package org.slugpeak.cli.option;

import org.slugpeak.core.peak.PeakSettings;

/**
 * How readings are taken.
 *
 * @param peak what is sought, and the dwell
 * @param stepped whether each reading is the settled value of one step of a turn
 */
public record AnalysisSettings(PeakSettings peak, boolean stepped) {

    /** Readings that follow a turning hand. */
    public static AnalysisSettings following(PeakSettings peak) {
        return new AnalysisSettings(peak, false);
    }
}
