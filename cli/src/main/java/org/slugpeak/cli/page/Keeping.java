package org.slugpeak.cli.page;

import java.util.Optional;
import org.slugpeak.cli.cue.Overheard;
import org.slugpeak.cli.moment.Called;
import org.slugpeak.cli.moment.CurveMomentKeeper;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/** Follows the session, and says what is to be told of it. One thread at a time. */
interface Keeping extends RecordSink {

    /** As it is after the last record. */
    Told told();

    /** Of a session in which something is turned. */
    final class OfSession implements Keeping {

        private final MomentKeeper keeper = new MomentKeeper();
        private final Overheard overheard = new Overheard();

        @Override
        public void take(SessionRecord record) {
            keeper.take(record);
            overheard.take(record);
        }

        @Override
        public Told told() {
            return new Told.OfSession(keeper.moment(), overheard.tone());
        }
    }

    /** Of a response curve. */
    final class OfCurve implements Keeping {

        private final CurveMomentKeeper keeper;
        private Optional<Called> called = Optional.empty();

        OfCurve(boolean byHand) {
            keeper = new CurveMomentKeeper(byHand);
        }

        @Override
        public void take(SessionRecord record) {
            keeper.take(record);
            if (record instanceof CurveWork.PointTaken) {
                called = Optional.of(Told.OfCurve.taken(called, record.tNanos()));
            }
        }

        @Override
        public Told told() {
            return new Told.OfCurve(keeper.moment(), called);
        }
    }
}
