package org.slugpeak.cli.run;

import java.util.Optional;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.SessionRecord;

/** Leads as another guide does; whoever extends it says what is different. One thread: the session's. */
public abstract class GuideAround implements Guide {

    private final Guide inner;

    /**
     * Around a guide.
     *
     * @param inner who leads
     */
    protected GuideAround(Guide inner) {
        this.inner = inner;
    }

    @Override
    public void begin(Analysis analysis) {
        inner.begin(analysis);
    }

    @Override
    public void take(SessionRecord record) {
        inner.take(record);
    }

    @Override
    public Optional<SessionRecord> passedOn(SessionRecord record) {
        return inner.passedOn(record);
    }

    @Override
    public void lead(Analysis analysis, SessionControl control) {
        inner.lead(analysis, control);
    }

    @Override
    public void next(Analysis analysis) {
        inner.next(analysis);
    }

    @Override
    public void again(Analysis analysis) {
        inner.again(analysis);
    }

    @Override
    public void counting(boolean underWay) {
        inner.counting(underWay);
    }

    @Override
    public void counted(Analysis analysis, double hz) {
        inner.counted(analysis, hz);
    }

    @Override
    public void back(Analysis analysis) {
        inner.back(analysis);
    }

    @Override
    public void skip(Analysis analysis) {
        inner.skip(analysis);
    }
}
