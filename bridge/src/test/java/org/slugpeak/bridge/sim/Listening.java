package org.slugpeak.bridge.sim;

import org.slugpeak.bridge.source.AnalysisListener;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.RecordSink;

/** Counts what a source delivers, and lets an analysis hear it. */
final class Listening extends AnalysisListener {

    int readings;
    int begun;
    double last;

    Listening(RecordSink hand) {
        super(new Analysis(PeakSettings.defaults(), hand));
    }

    @Override
    public void reading(Reading reading) {
        readings++;
        last = reading.value();
        super.reading(reading);
    }

    @Override
    public void link(long tNanos, Link.State state, LinkDetail detail) {
        throw new AssertionError(detail);
    }

    @Override
    public void garbled(String where, String problem) {
        throw new AssertionError(problem);
    }

    @Override
    public void nextAdjuster(String name) {
        super.nextAdjuster(name);
        begun++;
    }
}
