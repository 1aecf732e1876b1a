package org.slugpeak.core.steps;

import org.slugpeak.core.peak.Trend;

/** Counts the steps by which a hand goes on after a pass, until it turns back. One thread at a time. */
final class Overshoot {

    private final Teller teller;
    private StepsBack back;
    private boolean counting = true;

    /** The hand has just passed what lies so far back. */
    Overshoot(StepsBack back, Teller teller) {
        this.back = back;
        this.teller = teller;
    }

    /**
     * The next step.
     *
     * @param away the trend that leads away from what is sought
     */
    void step(long tNanos, Trend trend, Trend away) {
        counting = counting && (trend == away || trend == Trend.STEADY);
        if (!counting) {
            return;
        }
        back = new StepsBack(back.steps() + 1, back.stepsError(), back.top(), back.topError());
        StepsBack now = back;
        if (trend == away) {
            teller.tell(listener -> listener.further(tNanos, now));
        }
    }
}
