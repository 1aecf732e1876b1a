package org.slugpeak.bridge.sim;

import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.RecordSink;

/** Counts what a source delivers, and lets an analysis hear it. */
final class Listening implements SourceListener {

    int readings;
    int begun;
    double last;
    private final Analysis analysis;

    Listening(RecordSink hand) {
        this.analysis = new Analysis(PeakSettings.defaults(), hand);
    }

    @Override
    public void reading(Reading reading) {
        readings++;
        last = reading.value();
        analysis.reading(reading);
    }

    @Override
    public void link(long tNanos, Link.State state, String detail) {
        throw new AssertionError(detail);
    }

    @Override
    public void garbled(String where, String problem) {
        throw new AssertionError(problem);
    }

    @Override
    public void mark(String text) {
        analysis.mark(text);
    }

    @Override
    public void nextAdjuster(String name) {
        analysis.adjusterEnded(Adjuster.Action.DONE);
        analysis.nextAdjuster(name);
        begun++;
    }
}
