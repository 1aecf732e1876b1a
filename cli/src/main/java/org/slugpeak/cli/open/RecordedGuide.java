package org.slugpeak.cli.open;

import java.util.Optional;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.NumberedAdjusters;
import org.slugpeak.cli.run.SessionControl;
import org.slugpeak.cli.sheet.SheetGuide;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;

/**
 * For a session that is played again: its log says which adjuster is at hand, and from where on a sheet is filled, in which nobody
 * turns to a peak. One thread: the session's.
 */
public final class RecordedGuide implements Guide {

    private final NumberedAdjusters adjusters = NumberedAdjusters.toldBySource();
    private boolean ofSheet;

    @Override
    public void begin(Analysis analysis) {
        adjusters.begin(analysis);
    }

    @Override
    public void take(SessionRecord record) {
        adjusters.take(record);
        ofSheet = ofSheet || record instanceof SheetWork.Begun;
    }

    @Override
    public Optional<SessionRecord> passedOn(SessionRecord record) {
        return ofSheet ? SheetGuide.ofSheet(record) : adjusters.passedOn(record);
    }

    @Override
    public void lead(Analysis analysis, SessionControl control) {
        adjusters.lead(analysis, control);
    }

    @Override
    public void next(Analysis analysis) {
        adjusters.next(analysis);
    }

    @Override
    public void again(Analysis analysis) {
        adjusters.again(analysis);
    }

    @Override
    public void skip(Analysis analysis) {
        adjusters.skip(analysis);
    }
}
