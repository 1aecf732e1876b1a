package org.slugpeak.core.curve;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.slugpeak.core.session.Advice;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.word.Refused;

/**
 * How a response curve stands in the records of a session: one {@link Advice} a point, with the topic {@value #POINT}, the
 * frequency in hertz as text and the level as amount; the last one of a frequency counts. As a sink it gathers the points of a
 * log. One thread at a time.
 */
public final class CurveRecords implements RecordSink {

    /** Topic of a point. */
    public static final String POINT = "curve-point";

    /** Topic of the direction to set the generator; the amount is in Hz. */
    public static final String SET = "set-generator";

    private final Map<Double, ResponsePoint> points = new TreeMap<>();

    /** Nothing gathered yet. */
    public CurveRecords() {}

    /**
     * The text of the record of a point.
     *
     * @param hz generator frequency, Hz
     * @return hertz, to the millihertz
     */
    public static String text(double hz) {
        return String.format(Locale.ROOT, "%.3f", hz);
    }

    @Override
    public void take(SessionRecord record) {
        if (record instanceof Advice advice && advice.topic().equals(POINT) && advice.amount() > 0) {
            point(advice);
        }
    }

    private void point(Advice advice) {
        try {
            double hz = Double.parseDouble(advice.text());
            points.put(hz, ResponsePoint.of(hz, advice.amount()));
        } catch (NumberFormatException | Refused damaged) {
            // A text that is no frequency is no point of this curve.
            return;
        }
    }

    /**
     * The points so far.
     *
     * @return ascending in frequency
     */
    public List<ResponsePoint> points() {
        return List.copyOf(points.values());
    }
}
