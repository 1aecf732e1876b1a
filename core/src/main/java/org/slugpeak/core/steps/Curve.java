package org.slugpeak.core.steps;

import java.util.List;

/** A law of what a reading does near a top: on its scale the readings about the top lie on a parabola, open downwards. */
interface Curve {

    /** A reading's size on the scale of the law. */
    double scaled(double size);

    /** Back from that scale; infinite where no reading can be so high. */
    double size(double scaled);

    /**
     * A maximum: a plain parabola, and the curve of a tuned circuit, on which one over the square of the reading is a parabola.
     * A zero is taken for half the last digit, as it may have been that much.
     */
    static List<Curve> ofPeak(double resolution) {
        return List.of(new Plain(1), new Resonance(resolution / 2));
    }

    /**
     * A minimum: a plain parabola, and the curve of a wave trap. Far from the trap the reading stands at a level that is not
     * known, but is not lower than the largest reading, so both ends of what it may be are tried.
     */
    static List<Curve> ofDip(double largest, double resolution) {
        double nearest = largest + resolution;
        return List.of(new Plain(-1), new Trap(0), new Trap(1 / (nearest * nearest)));
    }

    /** The reading itself; the sign turns a minimum over. */
    record Plain(int sign) implements Curve {
        @Override
        public double scaled(double size) {
            return sign * size;
        }

        @Override
        public double size(double scaled) {
            return sign * scaled;
        }
    }

    /** V = A / sqrt(1 + x^2), so that -1 / V^2 is quadratic in x. */
    record Resonance(double least) implements Curve {
        @Override
        public double scaled(double size) {
            double atLeast = Math.max(size, least);
            return -1 / (atLeast * atLeast);
        }

        @Override
        public double size(double scaled) {
            return scaled < 0 ? 1 / Math.sqrt(-scaled) : Double.POSITIVE_INFINITY;
        }
    }

    /** V = A sqrt((d^2 + x^2) / (1 + x^2)), so that 1 / (1 / V^2 - 1 / A^2) is quadratic in x. */
    record Trap(double farInverseSquare) implements Curve {
        @Override
        public double scaled(double size) {
            return -1 / (1 / (size * size) - farInverseSquare);
        }

        @Override
        public double size(double scaled) {
            return scaled < 0 ? 1 / Math.sqrt(farInverseSquare - 1 / scaled) : 0;
        }
    }
}
