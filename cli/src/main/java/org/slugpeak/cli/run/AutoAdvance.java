package org.slugpeak.cli.run;

import java.util.Optional;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Frame;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/**
 * Finds out, with no key pressed, that the user has gone on to the next adjuster: the last one was held, and now the reading
 * moves again. It only watches; the loop asks {@link #isDue()} after each reading and then begins the next adjuster itself,
 * because a sink must not call back into the analysis that feeds it. One thread at a time.
 */
public final class AutoAdvance implements RecordSink {

    /** A smaller change than this may be a hand that is taken away, dB. */
    static final double DEPARTED_DB = 0.2;

    /** The same for a zero, where decibels have no meaning: a fraction of the largest swing. */
    static final double DEPARTED_OF_SWING = 0.02;

    /** One reading alone may be a spike. */
    private static final int READINGS_IN_A_ROW = 2;

    private final Watching watching = new Watching();
    private Optional<Held> armed = Optional.empty();
    private double swing;
    private int departed;

    /** Nothing is held yet. */
    public AutoAdvance() {}

    @Override
    public void take(SessionRecord record) {
        record.tellFamily(watching);
    }

    /** What arms it and what counts. */
    private final class Watching implements FamilyListener {

        @Override
        public void finding(Finding it) {
            if (it instanceof Held held) {
                armed = Optional.of(held);
                departed = 0;
            }
        }

        @Override
        public void work(Work it) {
            if (it instanceof Adjuster adjuster && adjuster.action() == Adjuster.Action.BEGIN) {
                armed = Optional.empty();
                swing = 0;
                departed = 0;
            }
        }

        @Override
        public void frame(Frame it) {
            if (it instanceof ReadingTaken taken && !Double.isNaN(taken.smoothed())) {
                swing = Math.max(swing, Math.abs(taken.smoothed()));
                boolean away = taken.trend() != Trend.STEADY
                        && armed.filter(held -> isAway(taken.smoothed(), held)).isPresent();
                departed = away ? departed + 1 : 0;
            }
        }
    }

    private boolean isAway(double smoothed, Held held) {
        boolean zero = Double.isNaN(held.lossDb());
        return zero
                ? Math.abs(smoothed - held.value()) > DEPARTED_OF_SWING * swing
                : Decibels.apart(smoothed, held.value()) > DEPARTED_DB;
    }

    /**
     * Whether the next adjuster should be begun now. It stays true until an adjuster is begun.
     *
     * @return true after an adjuster was held and the reading has begun to move again
     */
    public boolean isDue() {
        return departed >= READINGS_IN_A_ROW;
    }
}
