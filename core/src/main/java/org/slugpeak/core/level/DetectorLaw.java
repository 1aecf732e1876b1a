package org.slugpeak.core.level;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.slugpeak.core.decibel.Decibels;

/**
 * What a detector makes of its signal, measured by known steps of the generator: a monotone table from readings to decibels. A toe
 * {@code y = A u^2/(u + t)}, u the signal, is fitted to the steps in decibels; between the steps what it misses is taken as straight,
 * beyond them as staying. So the law goes on below the last step as a diode's does, from there to the square. Immutable; any thread
 * may use it.
 */
public final class DetectorLaw {

    /** A step of the generator that does not lower the reading by a quarter decibel was not followed, or not made. */
    private static final double LEAST_STEP_RATIO = 1.03;

    private static final int FEWEST = 3;

    /** From an almost straight detector to an almost square one, in terms of the first step's signal. */
    private static final double SMALLEST_TOE = 1e-3;

    private static final double LARGEST_TOE = 30;

    /** Far below the last digit of any meter. */
    private static final double SOLVED_SHARE = 1e-9;

    private static final int MOST_CALLS = 200;

    /**
     * One step.
     *
     * @param generatorDb against the first step
     * @param level above rest, in the unit of the readings
     */
    public record Step(double generatorDb, double level) {}

    private final List<Step> steps;
    private final double toe;
    private final double scale;
    private final List<Double> missedDb = new ArrayList<>();

    private DetectorLaw(List<Step> steps) {
        this.steps = steps;
        this.toe = Math.exp(new BrentOptimizer(1e-6, 1e-9)
                .optimize(
                        new MaxEval(MOST_CALLS),
                        GoalType.MINIMIZE,
                        new SearchInterval(Math.log(SMALLEST_TOE), Math.log(LARGEST_TOE)),
                        new UnivariateObjectiveFunction(lnToe -> missedSquares(Math.exp(lnToe))))
                .getPoint());
        this.scale = scale(toe);
        for (Step step : steps) {
            missedDb.add(step.generatorDb() - toeDb(step.level()));
        }
    }

    /**
     * A law from steps.
     *
     * @param steps three or more, in any order
     * @return empty where the readings did not follow every step
     */
    public static Optional<DetectorLaw> of(List<Step> steps) {
        List<Step> sorted = new ArrayList<>(steps);
        sorted.sort(Comparator.comparingDouble(Step::generatorDb));
        boolean followed = sorted.size() >= FEWEST && sorted.get(0).level() > 0;
        for (int i = 1; i < sorted.size(); i++) {
            followed = followed
                    && sorted.get(i).level()
                            > LEAST_STEP_RATIO * sorted.get(i - 1).level()
                    && sorted.get(i).generatorDb() > sorted.get(i - 1).generatorDb();
        }
        return followed ? Optional.of(new DetectorLaw(List.copyOf(sorted))) : Optional.empty();
    }

    private static double lnForm(Step step, double toe) {
        double signal = Decibels.ratio(step.generatorDb());
        return Math.log(signal * signal / (signal + toe));
    }

    private double scale(double withToe) {
        return Math.exp(steps.stream()
                .mapToDouble(step -> Math.log(step.level()) - lnForm(step, withToe))
                .average()
                .orElseThrow());
    }

    private double missedSquares(double withToe) {
        double lnScale = Math.log(scale(withToe));
        return steps.stream()
                .mapToDouble(step -> Math.log(step.level()) - lnForm(step, withToe) - lnScale)
                .map(missed -> missed * missed)
                .sum();
    }

    private double toeDb(double level) {
        double y = level / scale;
        return Decibels.of((y + Math.sqrt(y * y + 4 * y * toe)) / 2);
    }

    /**
     * What the generator would have to give.
     *
     * @param level above rest, in the unit of the readings; positive
     * @return dB against the first step
     */
    public double signalDb(double level) {
        return toeDb(level) + missedDb(level);
    }

    private double missedDb(double level) {
        int last = steps.size() - 1;
        if (level <= steps.get(0).level()) {
            return missedDb.get(0);
        }
        for (int i = 1; i <= last; i++) {
            double from = Math.log(steps.get(i - 1).level());
            double to = Math.log(steps.get(i).level());
            double t = (Math.log(level) - from) / (to - from);
            if (t <= 1) {
                return (1 - t) * missedDb.get(i - 1) + t * missedDb.get(i);
            }
        }
        return missedDb.get(last);
    }

    /**
     * The level that a straight detector would have shown, with the first step as it is.
     *
     * @param level above rest, in the unit of the readings; what is not positive stays
     * @return in the unit of the readings
     */
    public double straight(double level) {
        return level > 0 ? top().level() * Decibels.ratio(signalDb(level)) : level;
    }

    /**
     * {@link #straight} backwards.
     *
     * @param straight what a straight detector would show, in the unit of the readings; what is not positive stays
     * @return what this one shows, above rest, in the unit of the readings
     */
    public double level(double straight) {
        if (!(straight > 0)) {
            return straight;
        }
        double db = Decibels.of(straight / top().level());
        int above =
                (int) steps.stream().filter(step -> step.generatorDb() <= db).count();
        boolean between = above > 0 && above < steps.size();
        return between ? levelBetween(above, db) : toeLevel(db - missedDb.get(Math.min(above, steps.size() - 1)));
    }

    private double levelBetween(int above, double db) {
        double low = steps.get(above - 1).level();
        double high = steps.get(above).level();
        if (signalDb(low) >= db || signalDb(high) <= db) {
            return signalDb(low) >= db ? low : high;
        }
        return new BrentSolver(SOLVED_SHARE, SOLVED_SHARE * low)
                .solve(MOST_CALLS, level -> signalDb(level) - db, low, high);
    }

    private double toeLevel(double signalDb) {
        double signal = Decibels.ratio(signalDb);
        return scale * signal * signal / (signal + toe);
    }

    private Step top() {
        return steps.get(steps.size() - 1);
    }
}
