package org.slugpeak.core.rehearsal;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.level.MeterPoint;

/**
 * What an adjuster should have come to, worked out from the circuits and apart from any reading: the numerical optimum of the one
 * adjuster with the others as they are. Brent's methods are those of Commons Math. One thread at a time.
 */
public final class Truth {

    private static final int GRID = 100;
    private static final int MOST_CALLS = 200;

    /** A swept dial is looked over so many passbands to either side of where the oscillator is right, in so many steps. */
    private static final double ROCKED_PASSBANDS = 2;

    private static final int ROCKED_STEPS = 40;

    private final Circuits circuits;

    Truth(Circuits circuits) {
        this.circuits = circuits;
    }

    /**
     * What is missing to the best that the scene's adjuster can give.
     *
     * @param scene a peak or a dip
     * @return dB, 0 or more
     */
    public double missingDb(PlannedScene scene) {
        Knob knob = circuits.knob(scene);
        double stands = knob.turns();
        boolean dip = scene.role() == Role.TRAP;
        DoubleUnaryOperator level = turns -> {
            knob.turnTo(turns);
            return (dip ? -1 : 1) * level(scene);
        };
        double now = level.applyAsDouble(stands);
        double best = Math.max(
                now,
                greatest(level, -knob.reachTurns(), knob.reachTurns(), GRID).getValue());
        knob.turnTo(stands);
        return Math.abs(Decibels.of(best / now));
    }

    private double level(PlannedScene scene) {
        return scene.step().rock() ? sweepTop(scene) : at(scene, dialHz(scene));
    }

    /** Where the pointer is put for a scene: an aerial circuit is adjusted on the signal, not on the mark. */
    double dialHz(PlannedScene scene) {
        return scene.role() == Role.SIGNAL ? circuits.rightDialHz(scene) : scene.dialHz();
    }

    private double at(PlannedScene scene, double dialHz) {
        double carrier = circuits.response(scene, circuits.fedHz(scene), dialHz);
        return circuits.strip(scene)
                .detector()
                .filter(any -> scene.point() == MeterPoint.RATIO_DETECTOR)
                .map(detector -> carrier
                        * detector.at(circuits.convertedHz(scene, circuits.fedHz(scene), dialHz))
                                .half())
                .orElse(carrier);
    }

    private double sweepTop(PlannedScene scene) {
        double rightHz = circuits.rightDialHz(scene);
        double reachHz = ROCKED_PASSBANDS * circuits.strip(scene).widthHz();
        return greatest(hz -> at(scene, hz), rightHz - reachHz, rightHz + reachHz, ROCKED_STEPS)
                .getValue();
    }

    /** Where the dial stands when a scene's band is tuned to a signal for the greatest response. */
    double tunedDialHz(PlannedScene scene, double signalHz) {
        double rightHz = circuits.rightDialHz(scene, signalHz, signalHz);
        double reachHz = ROCKED_PASSBANDS * circuits.strip(scene).widthHz();
        return greatest(
                        dialHz -> circuits.response(scene, signalHz, dialHz),
                        rightHz - reachHz,
                        rightHz + reachHz,
                        GRID)
                .getPoint();
    }

    /** Where the generator gives the greatest response near a frequency, with the dial where it is. */
    double topHz(PlannedScene scene, double nearHz, double dialHz) {
        double reachHz = ROCKED_PASSBANDS * circuits.strip(scene).widthHz();
        return greatest(hz -> circuits.response(scene, hz, dialHz), nearHz - reachHz, nearHz + reachHz, GRID)
                .getPoint();
    }

    private static UnivariatePointValuePair greatest(DoubleUnaryOperator level, double low, double high, int steps) {
        double step = (high - low) / steps;
        double at = low;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= steps; i++) {
            double here = level.applyAsDouble(low + i * step);
            if (here > most) {
                most = here;
                at = low + i * step;
            }
        }
        return new BrentOptimizer(1e-7, 1e-9)
                .optimize(
                        new MaxEval(MOST_CALLS),
                        GoalType.MAXIMIZE,
                        new UnivariateObjectiveFunction(level::applyAsDouble),
                        new SearchInterval(Math.max(low, at - step), Math.min(high, at + step)));
    }

    /**
     * How far from the generator's frequency the discriminator has its zero.
     *
     * @param scene of the zero
     * @return Hz, positive above; NaN where there is none within a width of the windings
     */
    public double zeroOffHz(PlannedScene scene) {
        IfStrip strip = circuits.strip(scene);
        FmDetector detector = strip.detector().orElseThrow();
        DoubleUnaryOperator curve = hz -> detector.at(scene.signalHz() + hz).difference();
        double step = strip.widthHz() / 50;
        for (int i = 0; i < 50; i++) {
            for (double from : new double[] {i * step, -(i + 1) * step}) {
                if (curve.applyAsDouble(from) * curve.applyAsDouble(from + step) <= 0) {
                    return new BrentSolver(1e-3).solve(MOST_CALLS, curve::applyAsDouble, from, from + step);
                }
            }
        }
        return Double.NaN;
    }

    /**
     * How unequal the peaks of the discriminator's curve are, counted as the curve itself, whatever the strip before it lets through.
     *
     * @param scene of the zero
     * @return the greater side above the centre less the other one, of their mean; 0 for equal ones
     */
    public double peakAsymmetry(PlannedScene scene) {
        IfStrip strip = circuits.strip(scene);
        FmDetector detector = strip.detector().orElseThrow();
        double reachHz = 2 * strip.widthHz();
        double above = greatest(
                        hz -> Math.abs(detector.at(hz).difference()),
                        scene.signalHz(),
                        scene.signalHz() + reachHz,
                        GRID)
                .getValue();
        double below = greatest(
                        hz -> Math.abs(detector.at(hz).difference()),
                        scene.signalHz() - reachHz,
                        scene.signalHz(),
                        GRID)
                .getValue();
        return 2 * (above - below) / (above + below);
    }

    /**
     * How far the beat oscillator is off its carrier.
     *
     * @param scene of the zero beat
     * @return Hz, 0 or more: the note that is left
     */
    public double beatHz(PlannedScene scene) {
        return circuits.beatHz(scene, circuits.fedHz(scene));
    }

    /**
     * How far the dial is off where the scene's signal is heard.
     *
     * @param scene of the oscillator
     * @return a fraction of the signal's frequency, positive where the pointer stands too high
     */
    public double dialOff(PlannedScene scene) {
        double oscillatorHz = circuits.band(scene).oscillatorHz(scene.dialHz());
        return (scene.signalHz() + scene.side().sign() * scene.intermediateHz() - oscillatorHz) / scene.signalHz();
    }
}
