package org.slugpeak.core.session;

import java.time.Instant;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Measurand;

/**
 * The first record of a session. Immutable; any thread may use it.
 *
 * @param version of the record format; 1
 * @param startedAt wall time of the start
 * @param source the address of the source as the user gave it
 * @param measurand what is measured, in which unit
 * @param settings what is sought, and the dwell
 * @param tool name and version of the program that wrote the record
 * @param stepped whether each reading is the settled value of one step of a turn
 */
public record SessionStart(
        int version,
        Instant startedAt,
        String source,
        Measurand measurand,
        PeakSettings settings,
        String tool,
        boolean stepped)
        implements Frame {

    /**
     * A session of readings that follow a turning hand.
     *
     * @param version of the record format; 1
     * @param startedAt wall time of the start
     * @param source the address of the source as the user gave it
     * @param measurand what is measured, in which unit
     * @param settings what is sought, and the dwell
     * @param tool name and version of the program that wrote the record
     */
    public SessionStart(
            int version, Instant startedAt, String source, Measurand measurand, PeakSettings settings, String tool) {
        this(version, startedAt, source, measurand, settings, tool, false);
    }

    @Override
    public Manner manner() {
        return Manner.NOTES;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.sessionStart(this);
    }

    /** The version of the record format that this program writes. */
    public static final int CURRENT_VERSION = 1;

    /** A session starts at 0. */
    @Override
    public long tNanos() {
        return 0;
    }
}
