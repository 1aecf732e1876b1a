package org.slugpeak.cli.display;

import java.util.function.Supplier;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/** What a screen shows: it follows the session, and can be looked at any time. One thread feeds it; any thread may look. */
interface Sheet extends RecordSink {

    /** Everything that can be seen at one moment; two that are equal look the same. */
    interface Sight {
        Grid draw(Aside beside, int width, int height);
    }

    /** As it is now; immutable. */
    Sight sight();

    /** The usual one: something is turned, and the reading followed. */
    static Sheet ofSession(Page page) {
        SceneKeeper keeper = new SceneKeeper();
        return of(keeper, () -> new SessionSight(page, keeper.scene()));
    }

    /** The one of a response curve. */
    static Sheet ofCurve(CurvePage page, boolean byHand) {
        CurveSceneKeeper keeper = new CurveSceneKeeper(byHand);
        return of(keeper, () -> new CurveSight(page, keeper.scene()));
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

    /** A scene on its page. */
    record SessionSight(Page page, Scene scene) implements Sight {
        @Override
        public Grid draw(Aside beside, int width, int height) {
            return page.draw(scene, beside, width, height);
        }
    }

    /** A scene of a curve on its page. */
    record CurveSight(CurvePage page, CurveScene scene) implements Sight {
        @Override
        public Grid draw(Aside beside, int width, int height) {
            return page.draw(scene, beside, width, height);
        }
    }
}
