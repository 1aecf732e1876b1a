package org.slugpeak.core.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.word.Refused;

/**
 * A response curve as it was measured, taken as straight in dB between its points. Immutable; any thread may use it.
 */
public final class ResponseCurve {

    /** A difference of two readings is beyond noise, among a hundred of them, from here on. */
    private static final double NOISE_SIGMAS = 5;

    /** Median of a third difference of normal deviates of one sigma, without its sign: 0.6745 sqrt(20). */
    private static final double MEDIAN_THIRD_SIGMAS = 3.016;

    private static final int FEW = 12;

    private final List<ResponsePoint> points;
    private final double topLevel;

    private ResponseCurve(List<ResponsePoint> points) {
        this.points = points;
        this.topLevel = points.stream().mapToDouble(ResponsePoint::level).max().orElseThrow();
    }

    /**
     * A curve through points.
     *
     * @param points three or more above zero, in any order; others have no signal above rest and are left out
     * @return the curve
     * @throws Refused where there are too few points, or two at one frequency
     */
    public static ResponseCurve through(List<ResponsePoint> points) throws Refused {
        List<ResponsePoint> sorted =
                sorted(points.stream().filter(point -> point.level() > 0).toList());
        if (sorted.size() < 3) {
            throw new Refused("a response curve needs three points or more");
        }
        return new ResponseCurve(sorted);
    }

    /** Ascending in frequency, no two at one. */
    static List<ResponsePoint> sorted(List<ResponsePoint> points) throws Refused {
        List<ResponsePoint> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(ResponsePoint::hz));
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).hz() == sorted.get(i - 1).hz()) {
                throw new Refused(
                        "two points stand at " + Math.round(sorted.get(i).hz()) + " Hz: keep one of them");
            }
        }
        return List.copyOf(sorted);
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
     * How many humps the curve has, beyond its own noise.
     *
     * @param dipDb a dip counts only where it is deeper than this on both sides, dB
     * @return 1 or more
     */
    public int humps(double dipDb) {
        double noise = NOISE_SIGMAS * noise();
        int humps = 1;
        int top = 0;
        int bottom = 0;
        for (int i = 1; i < points.size(); i++) {
            bottom = db(i) < db(bottom) ? i : bottom;
            if (isAbove(top, bottom, dipDb, noise) && isAbove(i, bottom, dipDb, noise)) {
                humps++;
                top = i;
                bottom = i;
            } else if (db(i) > db(top)) {
                top = i;
                bottom = i;
            }
        }
        return humps;
    }

    private boolean isAbove(int index, int bottom, double dipDb, double noise) {
        return db(index) - db(bottom) > dipDb
                && points.get(index).level() - points.get(bottom).level() > noise;
    }

    /**
     * The noise of the points, from what their neighbours do not foretell: the median of the third differences, which a smooth
     * curve hardly has. Half of all points are skirts, so that it is the noise of a weak signal.
     *
     * @return one standard deviation, in the unit of the readings; 0 where a dozen points or fewer do not tell
     */
    public double noise() {
        if (points.size() <= FEW) {
            return 0;
        }
        double[] third = IntStream.range(3, points.size())
                .mapToDouble(i -> Math.abs(level(i) - 3 * level(i - 1) + 3 * level(i - 2) - level(i - 3)))
                .sorted()
                .toArray();
        return third[third.length / 2] / MEDIAN_THIRD_SIGMAS;
    }

    private double level(int index) {
        return points.get(index).level();
    }

    private double db(int index) {
        return Decibels.of(points.get(index).level() / topLevel);
    }
}
