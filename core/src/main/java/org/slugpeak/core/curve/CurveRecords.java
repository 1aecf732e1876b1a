package org.slugpeak.core.curve;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.slugpeak.core.session.CurveWork;
import org.slugpeak.core.session.HeardScale;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * Gathers the points of a response curve from the records of a session; the last one of a frequency counts. Where the session has
 * the detector's law, levels are those of a straight detector. One thread at a time.
 */
public final class CurveRecords implements RecordSink {

    private final HeardScale heard = new HeardScale();
    private final Map<Double, ResponsePoint> points = new TreeMap<>();

    /** Nothing gathered yet. */
    public CurveRecords() {}

    @Override
    public void take(SessionRecord record) {
        heard.take(record);
        if (record instanceof CurveWork.PointTaken point && point.hz() > 0 && Double.isFinite(point.level())) {
            points.put(point.hz(), new ResponsePoint(point.hz(), point.level()));
        }
    }

    /**
     * The points so far.
     *
     * @return ascending in frequency
     */
    public List<ResponsePoint> points() {
        return points.values().stream()
                .map(point -> new ResponsePoint(point.hz(), heard.scale().straightAboveRest(point.level())))
                .toList();
    }
}
