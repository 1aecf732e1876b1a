package org.slugpeak.cli.display;

import java.util.function.Supplier;
import org.slugpeak.cli.moment.Call;
import org.slugpeak.cli.moment.Called;
import org.slugpeak.cli.moment.CurveMoment;
import org.slugpeak.cli.moment.CurveMomentKeeper;
import org.slugpeak.cli.moment.Moment;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/** What a screen shows: it follows the session, and can be looked at any time. One thread feeds it; any thread may look. */
interface Sheet extends RecordSink {

    /** Everything that can be seen at one moment; two that are equal look the same. */
    interface Sight {
        Grid draw(Aside beside, int width, int height);

        /** How many times attention was called for so far. */
        long calls();
    }

    /** As it is now; immutable. */
    Sight sight();

    /** The usual one: something is turned, and the reading followed. */
    static Sheet ofSession(Page page) {
        MomentKeeper keeper = new MomentKeeper();
        return of(keeper, () -> new SessionSight(page, keeper.moment()));
    }

    /** The one of a response curve. */
    static Sheet ofCurve(CurvePage page, boolean byHand) {
        CurveMomentKeeper keeper = new CurveMomentKeeper(byHand);
        return of(keeper, () -> new CurveSight(page, keeper.moment()));
    }

    private static Sheet of(RecordSink keeper, Supplier<Sight> looking) {
        return new Sheet() {
            @Override
            public void take(SessionRecord record) {
                keeper.take(record);
            }

            @Override
            public Sight sight() {
                return looking.get();
            }
        };
    }

    /** A moment on its page. */
    record SessionSight(Page page, Moment moment) implements Sight {
        @Override
        public Grid draw(Aside beside, int width, int height) {
            return page.draw(moment, beside, width, height);
        }

        @Override
        public long calls() {
            return moment.called()
                    .filter(it -> it.call() != Call.BEGIN)
                    .map(Called::number)
                    .orElse(0L);
        }
    }

    /** A moment of a curve on its page. */
    record CurveSight(CurvePage page, CurveMoment moment) implements Sight {
        @Override
        public Grid draw(Aside beside, int width, int height) {
            return page.draw(moment, beside, width, height);
        }

        @Override
        public long calls() {
            return 0;
        }
    }
}
