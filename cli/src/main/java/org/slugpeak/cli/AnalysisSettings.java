package org.slugpeak.cli;

import org.slugpeak.core.peak.PeakSettings;

/**
 * How readings are taken.
 *
 * @param peak what is sought, and the dwell
 * @param stepped whether each reading is the settled value of one step of a turn
 */
record AnalysisSettings(PeakSettings peak, boolean stepped) {

    /** Readings that follow a turning hand. */
    static AnalysisSettings following(PeakSettings peak) {
        return new AnalysisSettings(peak, false);
    }
}
