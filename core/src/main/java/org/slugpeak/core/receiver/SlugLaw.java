package org.slugpeak.core.receiver;

import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * How the inductance of a coil follows the turns of its slug. It rises along an S as the slug goes in and falls again along
 * the same S when the slug leaves at the far end: so one resonance has two slug positions.
 *
 * <p>The S is one measured coil (inductance against depth of a slug, 0 to 100 %: 150, 170, 209, 285, 372, 440, 457 nH; no
 * maker, no uncertainty known), scaled to the span of an iron-cored IF coil, and mirrored beyond full depth.
 *
 * <p>Immutable; any thread may use it.
 */
public final class SlugLaw {

    private static final double[] DEPTH = {0, 0.16, 0.33, 0.50, 0.67, 0.83, 1};
    private static final double[] NANOHENRY = {150, 170, 209, 285, 372, 440, 457};

    private final double turnsToFullDepth;
    private final double span;
    private final double workingDepth;
    private final PolynomialSplineFunction shape;

    /**
     * A law.
     *
     * @param turnsToFullDepth from just outside to fully inside; positive
     * @param span ratio of the inductance fully inside to that without a slug, less 1; positive
     * @param workingDepth depth, as a fraction of the full one, at which the coil has its nominal inductance, between
     *     0 and 1
     */
    public SlugLaw(double turnsToFullDepth, double span, double workingDepth) {
        this.turnsToFullDepth = turnsToFullDepth;
        this.span = span;
        this.workingDepth = workingDepth;
        this.shape = mirroredShape();
    }

    private static PolynomialSplineFunction mirroredShape() {
        int last = DEPTH.length - 1;
        double[] x = new double[2 * last + 1];
        double[] y = new double[2 * last + 1];
        for (int i = 0; i <= last; i++) {
            double inside = (NANOHENRY[i] - NANOHENRY[0]) / (NANOHENRY[last] - NANOHENRY[0]);
            x[i] = DEPTH[i];
            y[i] = inside;
            x[2 * last - i] = 2 - DEPTH[i];
            y[2 * last - i] = inside;
        }
        return new SplineInterpolator().interpolate(x, y);
    }

    /**
     * Change of inductance against the nominal.
     *
     * @param turns from the working position; positive is deeper; any finite number
     * @return as a fraction of the nominal inductance; 0 at the working position
     */
    public double inductanceChange(double turns) {
        return relative(workingDepth + turns / turnsToFullDepth) / relative(workingDepth) - 1;
    }

    /**
     * Where the same inductance is met again on the far side.
     *
     * @return turns from the working position
     */
    public double secondPositionTurns() {
        return 2 * (1 - workingDepth) * turnsToFullDepth;
    }

    /**
     * The position for a wanted change, on the near side.
     *
     * @param fraction wanted change of inductance
     * @return turns from the working position
     * @throws IllegalArgumentException if the slug cannot reach it
     */
    public double turnsFor(double fraction) {
        double low = -workingDepth * turnsToFullDepth;
        double high = (1 - workingDepth) * turnsToFullDepth;
        if (fraction < inductanceChange(low) || fraction > inductanceChange(high)) {
            throw new IllegalArgumentException("the slug cannot change the inductance by " + fraction);
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (inductanceChange(middle) < fraction) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private double relative(double depth) {
        return 1 + span * shape.value(Math.min(2, Math.max(0, depth)));
    }
}
