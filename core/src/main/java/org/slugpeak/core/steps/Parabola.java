package org.slugpeak.core.steps;

import java.util.Optional;

/**
 * The top of a parabola through readings one step apart. Immutable.
 *
 * @param offset from the middle of the highest readings, in steps; positive towards the later reading
 * @param rise above the highest reading
 */
record Parabola(double offset, double rise) {

    /** Nothing stands out. */
    static final Parabola FLAT = new Parabola(0, 0);

    /**
     * The parabola whose falls from the top to its two neighbours are given. Equal readings at the top count as one that is as
     * wide as they are.
     *
     * @param fallBefore from the top to the reading before; below 0 is taken for 0
     * @param fallAfter from the top to the reading after; below 0 is taken for 0
     * @param halfWidth of the equal readings, steps
     * @return empty where it falls to neither side, or less or further than numbers tell
     */
    static Optional<Parabola> of(double fallBefore, double fallAfter, double halfWidth) {
        double before = Math.max(0, fallBefore);
        double after = Math.max(0, fallAfter);
        if (!(before + after >= Double.MIN_NORMAL && before + after < Double.POSITIVE_INFINITY)) {
            return Optional.empty();
        }
        double width = 2 * halfWidth + 1;
        double side = halfWidth + 1;
        double curvature = (before + after) / (2 * width);
        double slope = (before - after) / (2 * side);
        double offset = slope / (2 * curvature);
        // Three equal readings lie on no parabola: rounding made them so, and between them nothing stands out.
        double rise = halfWidth < 1 ? curvature * halfWidth * halfWidth + slope * slope / (4 * curvature) : 0;
        return Optional.of(new Parabola(offset, rise));
    }

    static Optional<Parabola> of(Crest crest, Curve curve) {
        double top = curve.scaled(crest.top());
        return of(top - curve.scaled(crest.before()), top - curve.scaled(crest.after()), crest.halfWidth());
    }
}
