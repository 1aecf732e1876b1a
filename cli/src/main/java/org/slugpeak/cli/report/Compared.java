package org.slugpeak.cli.report;

import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.core.curve.Estimate;

/**
 * One figure of two sessions. Immutable; any thread may use it.
 *
 * @param part what it is a figure of
 * @param name of the adjuster, or point of the dial; empty for a curve
 * @param quantity what is compared, in today's language
 * @param unit of all its numbers
 * @param then in the first session; empty where it is not known there
 * @param now in the second session; empty where it is not known there
 */
record Compared(Part part, String name, String quantity, String unit, Optional<Estimate> then, Optional<Estimate> now) {

    /** Two sigma hold about 95 % (JCGM 100:2008, 6.3.3). */
    static final double COVERAGE = 2;

    /** Of what a figure is. */
    enum Part {
        ADJUSTER,
        DIAL,
        CURVE,
        SHEET
    }

    /** What is to be said of the two. */
    enum Verdict {
        UNCHANGED,
        CHANGED,
        /** Nothing tells how well the figures are known. */
        UNKNOWN,
        ONLY_THEN,
        ONLY_NOW
    }

    /** The second less the first, in the unit; empty where one is missing. */
    OptionalDouble change() {
        return then.isPresent() && now.isPresent()
                ? OptionalDouble.of(now.get().value() - then.get().value())
                : OptionalDouble.empty();
    }

    /** Half-width of what the change is known to, in the unit; NaN where not known. */
    double uncertainty() {
        return COVERAGE
                * Math.hypot(
                        then.map(Estimate::sigma).orElse(Double.NaN),
                        now.map(Estimate::sigma).orElse(Double.NaN));
    }

    Verdict verdict() {
        if (change().isEmpty()) {
            return then.isPresent() ? Verdict.ONLY_THEN : Verdict.ONLY_NOW;
        }
        if (Double.isNaN(uncertainty())) {
            return Verdict.UNKNOWN;
        }
        return Math.abs(change().getAsDouble()) <= uncertainty() ? Verdict.UNCHANGED : Verdict.CHANGED;
    }
}
