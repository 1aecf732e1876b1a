package org.slugpeak.bridge.source;

import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;
import org.slugpeak.core.session.LinkNotice;
import org.slugpeak.core.session.Untimed;

/**
 * Carries what a source delivers into an analysis, each thing as it comes: live sessions, replays and tests all go through
 * here. What is done with what was no reading is left to those who extend it. One thread at a time.
 */
public abstract class AnalysisListener implements SourceListener {

    private final Analysis analysis;

    /**
     * A listener that feeds an analysis.
     *
     * @param analysis gets everything
     */
    protected AnalysisListener(Analysis analysis) {
        this.analysis = analysis;
    }

    /**
     * Asked for before each thing is passed on.
     *
     * @return the analysis
     */
    protected Analysis analysis() {
        return analysis;
    }

    @Override
    public void reading(Reading reading) {
        analysis().reading(reading);
    }

    @Override
    public void link(long tNanos, Link.State state, LinkDetail detail) {
        analysis().link(tNanos, state, detail);
    }

    @Override
    public void notice(long tNanos, LinkNotice notice, LinkDetail detail) {
        analysis().interrupted(notice, detail);
    }

    @Override
    public void remark(Untimed what) {
        analysis().tell(what);
    }

    @Override
    public void note(String text) {
        analysis().note(text);
    }

    @Override
    public void command(Instruction instruction) {
        analysis().command(instruction);
    }

    @Override
    public void nextAdjuster(String name) {
        analysis().nextAdjuster(name);
    }

    @Override
    public void adjusterEnded(Adjuster.Action action) {
        analysis().adjusterEnded(action);
    }
}
