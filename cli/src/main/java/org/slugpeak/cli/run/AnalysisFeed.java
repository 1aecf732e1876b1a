package org.slugpeak.cli.run;

import org.slugpeak.bridge.source.LinkNotice;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Link;

/** Carries what a source delivers into the analysis, and counts what was no reading. One thread. */
final class AnalysisFeed implements SourceListener {

    private static final int TOLD_ONE_BY_ONE = 5;

    private final Analysis analysis;
    private final Runnable beginning;
    private final Runnable afterReading;
    private boolean begun;
    private int garbled;

    /**
     * A feed that opens the session when the first thing comes: only then does every source know what it measures.
     *
     * @param analysis gets everything
     * @param beginning opens the session
     * @param afterReading is run when a reading has been dealt with
     */
    AnalysisFeed(Analysis analysis, Runnable beginning, Runnable afterReading) {
        this.analysis = analysis;
        this.beginning = beginning;
        this.afterReading = afterReading;
    }

    /** Opens the session where that has not happened yet. */
    void begin() {
        if (!begun) {
            begun = true;
            beginning.run();
        }
    }

    @Override
    public void reading(Reading reading) {
        begin();
        analysis.reading(reading);
        afterReading.run();
    }

    @Override
    public void link(long tNanos, Link.State state, String detail) {
        begin();
        analysis.link(tNanos, state, detail);
    }

    @Override
    public void garbled(String where, String problem) {
        begin();
        garbled++;
        if (garbled <= TOLD_ONE_BY_ONE) {
            analysis.advise("not-a-reading", where + ": " + problem, garbled);
        }
    }

    @Override
    public void notice(long tNanos, LinkNotice notice, String detail) {
        begin();
        analysis.interrupted(notice.code(), detail);
    }

    @Override
    public void advice(long tNanos, String topic, String text, double amount) {
        begin();
        analysis.advise(topic, text, amount);
    }

    @Override
    public void adjusterEnded(Adjuster.Action action) {
        analysis.adjusterEnded(action);
    }

    @Override
    public void mark(String text) {
        begin();
        analysis.mark(text);
    }

    @Override
    public void nextAdjuster(String name) {
        begin();
        analysis.adjusterEnded(Adjuster.Action.DONE);
        analysis.nextAdjuster(name);
    }

    /** Says how many lines were no readings, where that was not said for each. */
    void summarise() {
        if (garbled > TOLD_ONE_BY_ONE) {
            analysis.advise("not-a-reading", garbled + " lines in all were not readings and were left out", garbled);
        }
    }
}
