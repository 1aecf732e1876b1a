package org.slugpeak.core.peak.bench;

import org.slugpeak.core.peak.PeakFinder;
import org.slugpeak.core.peak.PeakListener;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Condition;

/** Whatever watches readings and says verdicts: the finder, or a baseline. */
interface Watcher {

    void accept(long tNanos, double value);

    double best();

    /** Makes a watcher that speaks to a listener. */
    interface Maker {
        Watcher make(PeakListener listener);
    }

    static Watcher finder(PeakListener listener) {
        PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), listener);
        return new Watcher() {
            @Override
            public void accept(long tNanos, double value) {
                finder.accept(tNanos, value, Condition.OK);
            }

            @Override
            public double best() {
                return finder.best();
            }
        };
    }
}
