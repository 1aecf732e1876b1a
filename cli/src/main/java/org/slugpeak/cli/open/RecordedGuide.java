package org.slugpeak.cli.open;

import java.util.Optional;
import org.slugpeak.cli.run.GuideAround;
import org.slugpeak.cli.run.NumberedAdjusters;
import org.slugpeak.cli.sheet.SheetGuide;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;

/**
 * For a session that is played again: its log says which adjuster is at hand, and from where on a sheet is filled, in which nobody
 * turns to a peak. One thread: the session's.
 */
public final class RecordedGuide extends GuideAround {

    private boolean ofSheet;

    /** At the beginning of a log. */
    public RecordedGuide() {
        super(NumberedAdjusters.toldBySource());
    }

    @Override
    public void take(SessionRecord record) {
        super.take(record);
        ofSheet = ofSheet || record instanceof SheetWork.Begun;
    }

    @Override
    public Optional<SessionRecord> passedOn(SessionRecord record) {
        return ofSheet ? SheetGuide.ofSheet(record) : super.passedOn(record);
    }
}
