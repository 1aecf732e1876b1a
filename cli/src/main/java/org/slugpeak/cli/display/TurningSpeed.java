package org.slugpeak.cli.display;

import java.util.Arrays;
import java.util.Optional;
import org.slugpeak.cli.words.SeekPhrase;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/**
 * Says once, for a meter that is slow, how fast an adjuster may be turned so that ten readings fall into the upper decibel of
 * its peak: turns a second = width in turns x readings a second / 10 (computed; the widths are those of a loaded IF
 * transformer's slug and of an aerial trimmer near 1400 kHz). One thread at a time.
 */
final class TurningSpeed {

    /** A faster meter follows any hand. */
    static final double SLOW_PER_SECOND = 5;

    /** Width of the peak 1 dB down, turns. */
    static final double SLUG_WIDTH_TURNS = 0.47;

    /** The same for a trimmer. */
    static final double TRIMMER_WIDTH_TURNS = 0.076;

    private static final int READINGS_ACROSS = 10;
    private static final int INTERVALS = 7;

    private final long[] intervals = new long[INTERVALS];
    private int count;
    private long lastNanos = Long.MIN_VALUE;
    private boolean said;

    static double turnsPerSecond(double widthTurns, double readingsPerSecond) {
        return widthTurns * readingsPerSecond / READINGS_ACROSS;
    }

    /** Gives what to say; empty most of the time. */
    Optional<String> see(SessionRecord record) {
        if (record instanceof SessionStart start && start.stepped()) {
            said = true;
        }
        if (record instanceof Link.Changed) {
            lastNanos = Long.MIN_VALUE;
        }
        // Where nothing is compared nothing is turned, or it is a zero, which has no width.
        if (said || !(record instanceof ReadingTaken taken) || Double.isNaN(taken.best())) {
            return Optional.empty();
        }
        if (lastNanos != Long.MIN_VALUE) {
            intervals[count++] = record.tNanos() - lastNanos;
        }
        lastNanos = record.tNanos();
        said = count == INTERVALS;
        return said ? verdict() : Optional.empty();
    }

    private Optional<String> verdict() {
        Arrays.sort(intervals);
        double perSecond = 1e9 / Math.max(1, intervals[INTERVALS / 2]);
        if (perSecond > SLOW_PER_SECOND) {
            return Optional.empty();
        }
        return Optional.of(SeekPhrase.SLOW_READINGS.of(
                perSecond,
                1 / turnsPerSecond(SLUG_WIDTH_TURNS, perSecond),
                1 / turnsPerSecond(TRIMMER_WIDTH_TURNS, perSecond)));
    }
}
