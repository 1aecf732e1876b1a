package org.slugpeak.cli.run;

import java.util.function.Supplier;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.SessionStart;

/** Carries what a source delivers into the analysis, and counts what was no reading. One thread. */
final class AnalysisFeed implements SourceListener {

    private static final int TOLD_ONE_BY_ONE = 5;

    private final Analysis analysis;
    private final Supplier<SessionStart> start;
    private boolean begun;
    private int garbled;

    /**
     * A feed that opens the session when the first thing comes: only then does every source know what it measures.
     *
     * @param analysis gets everything
     * @param start makes the first record
     */
    AnalysisFeed(Analysis analysis, Supplier<SessionStart> start) {
        this.analysis = analysis;
        this.start = start;
    }

    /** Opens the session where that has not happened yet. */
    void begin() {
        if (!begun) {
            begun = true;
            analysis.start(start.get());
        }
    }

    @Override
    public void reading(Reading reading) {
        begin();
        analysis.reading(reading);
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
    public void mark(String text) {
        begin();
        analysis.mark(text);
    }

    @Override
    public void nextAdjuster(String name) {
        begin();
        analysis.nextAdjuster(name);
    }

    /** Says how many lines were no readings, where that was not said for each. */
    void summarise() {
        if (garbled > TOLD_ONE_BY_ONE) {
            analysis.advise("not-a-reading", garbled + " lines in all were not readings and were left out", garbled);
        }
    }
}
