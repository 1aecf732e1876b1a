package org.slugpeak.cli.open;

import java.util.Optional;
import java.util.function.Function;
import org.slugpeak.cli.curve.CurveGuide;
import org.slugpeak.cli.run.GuideAround;
import org.slugpeak.cli.run.NumberedAdjusters;
import org.slugpeak.cli.sheet.SheetGuide;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SheetWork;

/**
 * For a session that is played again: its log says which adjuster is at hand, and from where on a sheet is filled or a curve measured,
 * in which nobody turns to a peak. One thread: the session's.
 */
public final class RecordedGuide extends GuideAround {

    private Optional<Function<SessionRecord, Optional<SessionRecord>>> quiet = Optional.empty();

    /** At the beginning of a log. */
    public RecordedGuide() {
        super(NumberedAdjusters.toldBySource());
    }

    @Override
    public void take(SessionRecord record) {
        super.take(record);
        quiet = quiet.or(() -> from(record));
    }

    /** A sheet says that it begins before anything is asked of the generator, a curve does not. */
    private static Optional<Function<SessionRecord, Optional<SessionRecord>>> from(SessionRecord record) {
        if (record instanceof SheetWork.Begun) {
            return Optional.of(SheetGuide::ofSheet);
        }
        return record instanceof Logged asked && asked.topic() == Logged.Topic.SET_GENERATOR
                ? Optional.of(CurveGuide::ofCurve)
                : Optional.empty();
    }

    @Override
    public Optional<SessionRecord> passedOn(SessionRecord record) {
        return quiet.isPresent() ? quiet.get().apply(record) : super.passedOn(record);
    }
}
