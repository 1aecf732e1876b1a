package org.slugpeak.core.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.word.Refused;

/**
 * A response curve as it was measured, taken as straight in dB between its points. Immutable; any thread may use it.
 */
public final class ResponseCurve {

    private final List<ResponsePoint> points;
    private final double topLevel;

    private ResponseCurve(List<ResponsePoint> points) {
        this.points = points;
        this.topLevel = points.stream().mapToDouble(ResponsePoint::level).max().orElseThrow();
    }

    /**
     * A curve through points.
     *
     * @param points three or more, in any order
     * @return the curve
     * @throws Refused where there are too few points, or two at one frequency
     */
    public static ResponseCurve through(List<ResponsePoint> points) throws Refused {
        if (points.size() < 3) {
            throw new Refused("a response curve needs three points or more");
        }
        List<ResponsePoint> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(ResponsePoint::hz));
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).hz() == sorted.get(i - 1).hz()) {
                throw new Refused(
                        "two points stand at " + Math.round(sorted.get(i).hz()) + " Hz: keep one of them");
            }
        }
        return new ResponseCurve(List.copyOf(sorted));
    }

    /**
     * The points.
     *
     * @return ascending in frequency
     */
    public List<ResponsePoint> points() {
        return points;
    }

    /**
     * The highest point.
     *
     * @return the first of them where several are equal
     */
    public ResponsePoint highest() {
        return points.stream()
                .filter(point -> point.level() == topLevel)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Response below the highest point.
     *
     * @param hz frequency, Hz
     * @return dB, not positive; empty outside the measured range
     */
    public OptionalDouble dbAt(double hz) {
        for (int i = 1; i < points.size(); i++) {
            double from = points.get(i - 1).hz();
            double to = points.get(i).hz();
            if (hz >= from && hz <= to) {
                double t = (hz - from) / (to - from);
                return OptionalDouble.of((1 - t) * db(i - 1) + t * db(i));
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * What lies between the outermost points of a given response.
     *
     * @param downDb how far below the highest point, dB, positive
     * @return empty where the curve does not fall that far on both sides
     */
    public Optional<Passband> passband(double downDb) {
        OptionalDouble low = crossing(-downDb, 0, +1);
        OptionalDouble high = crossing(-downDb, points.size() - 1, -1);
        return low.isPresent() && high.isPresent()
                ? Optional.of(new Passband(low.getAsDouble(), high.getAsDouble()))
                : Optional.empty();
    }

    /** From one end inwards, where the curve first rises to a response; empty where it begins above it. */
    private OptionalDouble crossing(double db, int end, int step) {
        if (db(end) > db) {
            return OptionalDouble.empty();
        }
        int inner = end;
        while (db(inner) < db) {
            inner += step;
        }
        if (inner == end) {
            return OptionalDouble.of(points.get(end).hz());
        }
        int outer = inner - step;
        double t = (db - db(outer)) / (db(inner) - db(outer));
        return OptionalDouble.of(points.get(outer).hz()
                + t * (points.get(inner).hz() - points.get(outer).hz()));
    }

    /**
     * How equal the skirts are.
     *
     * @param centreHz frequency that should be the middle, Hz
     * @param offsetHz how far to either side, Hz
     * @return response above minus response below, dB: positive where the upper side is stronger, so that the circuits are
     *     tuned too high; empty where one side was not measured
     */
    public OptionalDouble skirtDifferenceDb(double centreHz, double offsetHz) {
        OptionalDouble upper = dbAt(centreHz + offsetHz);
        OptionalDouble lower = dbAt(centreHz - offsetHz);
        return upper.isPresent() && lower.isPresent()
                ? OptionalDouble.of(upper.getAsDouble() - lower.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * How many humps the curve has.
     *
     * @param dipDb a dip counts only where it is deeper than this on both sides, dB: three sigma of the readings, or more
     * @return 1 or more
     */
    public int humps(double dipDb) {
        int humps = 1;
        double top = db(0);
        double bottom = Double.POSITIVE_INFINITY;
        for (int i = 1; i < points.size(); i++) {
            double here = db(i);
            bottom = Math.min(bottom, here);
            if (top - bottom > dipDb && here - bottom > dipDb) {
                humps++;
                top = here;
                bottom = here;
            } else if (here > top) {
                top = here;
                bottom = here;
            }
        }
        return humps;
    }

    private double db(int index) {
        return Decibels.of(points.get(index).level() / topLevel);
    }
}
