package org.slugpeak.core.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.Uncertainty;

/**
 * Seeks the input for an output by few settings: the secant between the nearest settings on both sides of it, and the slope from them for
 * what is left. In decibels, in which a set that follows is a straight line, and one with a weak signal or gain control a line that bends
 * little within {@value #NEAR_DB} dB. One thread at a time.
 */
final class InputSearch {

    /** So near the slope of neighbours makes up for the rest. */
    private static final double NEAR_DB = 1;

    /** A neighbour further off tells nothing of the slope here, one nearer too little. */
    private static final double FURTHEST_DB = 10;

    private static final double NEAREST_DB = 1;
    private static final double NEIGHBOUR_DB = 3;

    /** More at once may overload set or meter. */
    private static final double LONGEST_STEP_DB = 20;

    /** A square-law detector gives 2, gain control a tenth (common practice, no source); beyond, noise was taken for a slope. */
    private static final double LEAST_SLOPE = 0.05;

    private static final double MOST_SLOPE = 3;

    /** By what part of itself a slope may change for a decibel of input: for weak signals it falls from 2 to 1 over some 20 dB. */
    private static final double BEND_PER_DB = 0.05;

    private static final double SAME_DB = 0.1;
    private static final int MOST_SETTINGS = 14;

    private final double targetDb;
    private final double lowDb;
    private final double highDb;
    private final List<TransferPoint> points = new ArrayList<>();
    private double nextDb;
    private boolean over;

    /**
     * A search.
     *
     * @param targetDb output that is wanted, dB
     * @param startDb first input, dB over a volt EMF
     * @param lowDb the generator's least
     * @param highDb its most
     */
    InputSearch(double targetDb, double startDb, double lowDb, double highDb) {
        this.targetDb = targetDb;
        this.lowDb = lowDb;
        this.highDb = highDb;
        this.nextDb = within(startDb);
    }

    /** The input that is to be set now; empty where the search is over. */
    OptionalDouble nextDb() {
        return over ? OptionalDouble.empty() : OptionalDouble.of(nextDb);
    }

    /** What was read at an input, the one that was asked for or another. */
    void take(TransferPoint point) {
        points.add(point);
        if (points.size() >= MOST_SETTINGS || isKnown()) {
            over = true;
            return;
        }
        double proposed = within(proposal());
        over = points.stream().anyMatch(it -> Math.abs(it.inputDb() - proposed) < SAME_DB);
        nextDb = proposed;
    }

    private double within(double inputDb) {
        return Math.max(lowDb, Math.min(highDb, inputDb));
    }

    private boolean isKnown() {
        Optional<TransferPoint> nearest = nearest();
        Optional<TransferPoint> neighbour = nearest.flatMap(this::neighbour);
        return neighbour.isPresent()
                && isNear(nearest.get())
                && Math.abs(missingDb(nearest.get())) <= NEAR_DB * slope(nearest.get(), neighbour.get());
    }

    private boolean isNear(TransferPoint point) {
        return Math.abs(missingDb(point)) <= NEAR_DB;
    }

    private double missingDb(TransferPoint point) {
        return targetDb - point.outputDb();
    }

    private Optional<TransferPoint> nearest() {
        return points.stream()
                .filter(TransferPoint::isLevel)
                .min(Comparator.comparingDouble(it -> Math.abs(missingDb(it))));
    }

    /** The best one for a slope: at some distance, on the other side of the target where there is one. */
    private Optional<TransferPoint> neighbour(TransferPoint of) {
        return points.stream()
                .filter(TransferPoint::isLevel)
                .filter(it -> apartDb(it, of) >= NEAREST_DB && apartDb(it, of) <= FURTHEST_DB)
                .min(Comparator.comparing((TransferPoint it) -> missingDb(it) * missingDb(of) > 0)
                        .thenComparingDouble(it -> Math.abs(apartDb(it, of) - NEIGHBOUR_DB)));
    }

    private static double apartDb(TransferPoint one, TransferPoint other) {
        return Math.abs(one.inputDb() - other.inputDb());
    }

    private double proposal() {
        Optional<TransferPoint> below = closest(it -> it.outputDb() <= targetDb, Comparator.reverseOrder());
        Optional<TransferPoint> above = closest(it -> it.outputDb() > targetDb, Comparator.naturalOrder());
        Optional<TransferPoint> nearest = nearest();
        if (nearest.filter(this::isNear).isPresent() && neighbour(nearest.get()).isEmpty()) {
            TransferPoint at = nearest.get();
            double other = at.inputDb() + Math.copySign(NEIGHBOUR_DB, missingDb(at));
            return within(other) == other ? other : 2 * at.inputDb() - other;
        }
        if (below.isEmpty()) {
            return above.orElseThrow().inputDb() - step(above.get());
        }
        if (above.isEmpty()) {
            return below.get().inputDb() + step(below.get());
        }
        return between(below.get(), above.get());
    }

    private Optional<TransferPoint> closest(Predicate<TransferPoint> side, Comparator<Double> order) {
        return points.stream().filter(side).min(Comparator.comparing(TransferPoint::inputDb, order));
    }

    private double step(TransferPoint from) {
        if (!from.isLevel()) {
            return LONGEST_STEP_DB;
        }
        double slope = neighbour(from).map(it -> slope(it, from)).orElse(1.0);
        return Math.min(LONGEST_STEP_DB, Math.max(NEAREST_DB, Math.abs(missingDb(from)) / Math.min(slope, 2)));
    }

    private double between(TransferPoint below, TransferPoint above) {
        double middle = (below.inputDb() + above.inputDb()) / 2;
        if (!above.isLevel() || !below.isLevel()) {
            return middle;
        }
        double share = missingDb(below) / (above.outputDb() - below.outputDb());
        double secant = below.inputDb() + share * (above.inputDb() - below.inputDb());
        boolean wide = above.inputDb() - below.inputDb() > LONGEST_STEP_DB;
        return wide ? (secant + middle) / 2 : secant;
    }

    private static double slope(TransferPoint one, TransferPoint other) {
        double slope = (one.outputDb() - other.outputDb()) / (one.inputDb() - other.inputDb());
        return Math.max(LEAST_SLOPE, Math.min(MOST_SLOPE, slope));
    }

    /** What it came to; empty where there is neither an input nor a bound. */
    Optional<FoundInput> found() {
        Optional<TransferPoint> nearest = nearest();
        if (nearest.isEmpty()) {
            return Optional.empty();
        }
        boolean reached = Math.abs(missingDb(nearest.get())) <= 2 * NEAR_DB;
        return reached ? neighbour(nearest.get()).map(it -> interpolated(nearest.get(), it)) : bound();
    }

    private FoundInput interpolated(TransferPoint at, TransferPoint neighbour) {
        double slope = slope(at, neighbour);
        double rest = missingDb(at) / slope;
        double apart = apartDb(at, neighbour);
        double ofSlope = at.uncertainty().with(neighbour.uncertainty()).sigmaDb() / apart;
        Uncertainty uncertainty = at.uncertainty()
                .times(1 / slope)
                .interpolated(Math.abs(rest) * Math.hypot(BEND_PER_DB * apart / Math.sqrt(3), ofSlope / slope));
        return new FoundInput(at.inputDb() + rest, slope, uncertainty, Figure.Outcome.MEASURED);
    }

    private Optional<FoundInput> bound() {
        boolean allBelow = points.stream().allMatch(it -> it.outputDb() < targetDb);
        boolean allAbove = points.stream().allMatch(it -> it.outputDb() > targetDb);
        if (allBelow && points.stream().anyMatch(it -> it.inputDb() >= highDb)) {
            return Optional.of(new FoundInput(highDb, 1, Uncertainty.NONE, Figure.Outcome.AT_LEAST));
        }
        return allAbove && points.stream().anyMatch(it -> it.inputDb() <= lowDb)
                ? Optional.of(new FoundInput(lowDb, 1, Uncertainty.NONE, Figure.Outcome.AT_MOST))
                : Optional.empty();
    }
}
