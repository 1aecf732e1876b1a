package org.slugpeak.core.curve;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.HeardScale;
import org.slugpeak.core.session.Logged;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.Request;
import org.slugpeak.core.session.SessionRecord;

/**
 * Gathers the points of a response curve from the records of a session; of those that were asked for at one frequency, and of those that were found
 * at one, the last counts. Where the session has the detector's law, levels are those of a straight detector. One thread at a time.
 */
public final class CurveRecords implements RecordSink {

    private final HeardScale heard = new HeardScale();
    private final Map<Double, ResponsePoint> byWantedHz = new TreeMap<>();
    private final Hearing hearing = new Hearing();
    private OptionalDouble wantedHz = OptionalDouble.empty();

    /** Nothing gathered yet. */
    public CurveRecords() {}

    @Override
    public void take(SessionRecord record) {
        heard.take(record);
        record.tellFamily(hearing);
    }

    /** What a point was asked for at, and where it was found. */
    private final class Hearing implements FamilyListener {

        @Override
        public void request(Request it) {
            if (it instanceof Request.SetGenerator set) {
                wantedHz = OptionalDouble.of(set.hz());
            }
        }

        /** A log tells in words what was asked for, but for the frequency. */
        @Override
        public void logged(Logged it) {
            if (it.topic() == Logged.Topic.SET_GENERATOR) {
                wantedHz = OptionalDouble.of(it.amount());
            }
        }

        @Override
        public void curveWork(CurveWork it) {
            if (it instanceof CurveWork.PointTaken point && point.hz() > 0 && Double.isFinite(point.level())) {
                byWantedHz.put(wantedHz.orElse(point.hz()), new ResponsePoint(point.hz(), point.level()));
            }
        }
    }

    /**
     * The points so far.
     *
     * @return ascending in frequency
     */
    public List<ResponsePoint> points() {
        Map<Double, ResponsePoint> points = new TreeMap<>();
        for (ResponsePoint each : byWantedHz.values()) {
            double level = heard.scale().straightAboveRest(each.level());
            points.put(each.hz(), new ResponsePoint(each.hz(), level));
        }
        return List.copyOf(points.values());
    }
}
