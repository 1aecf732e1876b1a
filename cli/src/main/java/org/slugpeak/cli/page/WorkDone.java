package org.slugpeak.cli.page;

import java.util.ArrayList;
import java.util.List;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.SessionRecord;

/**
 * What has come of the session: adjusters with their gains, points of a curve. Immutable; any thread may use it.
 *
 * @param adjusters as they ended, the oldest first
 * @param points of a response curve, as they were taken
 */
record WorkDone(List<Adjuster> adjusters, List<CurveWork.PointTaken> points) {

    static final WorkDone NONE = new WorkDone(List.of(), List.of());

    /** More rows nobody looks at on a telephone: the report has them all. */
    static final int MOST_ADJUSTERS = 40;

    /** As many as a curve may have. */
    private static final int MOST_POINTS = 2000;

    /** With what a record adds; the same object where it adds nothing. */
    WorkDone with(SessionRecord record) {
        if (record instanceof Adjuster adjuster && adjuster.action() != Adjuster.Action.BEGIN) {
            return new WorkDone(added(adjusters, adjuster, MOST_ADJUSTERS), points);
        }
        if (record instanceof CurveWork.PointTaken point) {
            return new WorkDone(adjusters, added(points, point, MOST_POINTS));
        }
        return this;
    }

    private static <T> List<T> added(List<T> before, T one, int most) {
        List<T> after = new ArrayList<>(before.subList(Math.max(0, before.size() + 1 - most), before.size()));
        after.add(one);
        return List.copyOf(after);
    }
}
