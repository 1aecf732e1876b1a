package org.slugpeak.cli.display;

import org.slugpeak.cli.moment.Level;
import org.slugpeak.cli.moment.Moment;

/**
 * What was last told of the way to the best, so that it is told again only when it is another: farther away or nearer by more than a voice
 * is worth, and in the direction that the reading goes, which noise alone does not bring about. One thread at a time.
 */
final class ToldWay {

    /** Nobody turns by less than this that was told, dB; chosen. */
    private static final double LEAST_DB = 0.1;

    /** Far away, a change must be a part of the distance; chosen. */
    private static final double LEAST_PART = 0.2;

    /** A zero has no decibels: its largest swing stands for as many as a bar shows. */
    private static final double SWING_DB = BarScale.SPAN_DB;

    private double toldDb = Double.NaN;

    /** Something else was told. */
    void forget() {
        toldDb = Double.NaN;
    }

    void told(Moment moment) {
        toldDb = awayDb(moment.level());
    }

    boolean isNews(Moment moment) {
        double awayDb = awayDb(moment.level());
        if (Double.isNaN(toldDb)) {
            return true;
        }
        boolean nearer = awayDb < toldDb;
        double least = Math.max(LEAST_DB, LEAST_PART * Math.max(awayDb, toldDb));
        return Math.abs(awayDb - toldDb) >= least && nearer == moment.level().isNearing(moment.seek());
    }

    private static double awayDb(Level level) {
        return level.hasBest() ? level.distanceDb() : SWING_DB * Math.abs(level.value()) / level.swing();
    }
}
