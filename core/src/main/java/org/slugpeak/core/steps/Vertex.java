package org.slugpeak.core.steps;

import java.util.List;
import java.util.Optional;

/**
 * Where the top lies between readings that were taken one step apart, and how high it is.
 *
 * <p><b>Definition.</b> With p and q the falls from the highest reading b to the readings before and after it, the parabola
 * through the three has its vertex at offset = (p - q) / (2 (p + q)) steps, height = b + (p - q)^2 / (8 (p + q)). Of n equal
 * highest readings, w = (n - 1) / 2, the parabola is symmetric in the two ends: curvature k = (p + q) / (2 (2w + 1)), slope
 * s = (p - q) / (2 (w + 1)), offset s / 2k from their middle, height b + k w^2 + s^2 / 4k; from three equal readings on the
 * height is b.
 *
 * <p><b>Error.</b> Each reading was rounded by at most half a unit r of its last digit: the eight corners b, p, q come from are
 * all tried (worst case, not a standard deviation: where a fall is no larger than r the formula is far from linear, and the
 * propagation of r / sqrt(12) understates). A parabola is not the curve of a circuit either, so the corners are tried on it
 * too. The error is the distance to the farthest of all these vertices.
 *
 * <p><b>At the edges.</b> For any curve that is symmetric and falls to both sides the top lies within half a step of the equal
 * readings, so the error of the offset is never larger than that allows. An error of the height that knows no bound, as steps
 * much coarser than the curve give it, is NaN.
 *
 * <p><b>Why this way.</b> The circuit's law needs no search and no fourth reading: the transfer function of a linear circuit is
 * (A + Bx) / (C + Dx) in any one reactance x, so near a peak 1 / |H|^2, and near a null |H|^2 / (1 - |H|^2 / far^2), is
 * quadratic in x, whatever the other circuits do. Against x in turns it bends as the slug's own law does, which is left out:
 * over three steps about a top it hardly shows.
 *
 * <p>Immutable; any thread may use it. Sources: rounding as an interval of half the last digit to either side, JCGM 100:2008
 * (GUM) F.2.2.1; the vertex of three equally spaced ordinates is that of their Lagrange polynomial, M. Abramowitz and
 * I. Stegun, Handbook of Mathematical Functions, 25.2.11; bilinear form, H. W. Bode, Network Analysis and Feedback Amplifier
 * Design, 1945, chapter I (all three from memory).
 *
 * @param offset of the top from the middle of the highest readings, steps; positive towards the later reading
 * @param offsetError half the width of the interval that the top lies in, steps
 * @param height of the top, a size without sign
 * @param heightError half the width of the interval that the height lies in; NaN where it has no bound
 */
record Vertex(double offset, double offsetError, double height, double heightError) {

    /**
     * The top of a crest.
     *
     * @param crest the readings; one that falls to neither side is flat, and its middle is taken
     * @param curves what it may look like; the first gives the answer, the others only widen the error
     * @param resolution unit of the readings' last digit; positive
     */
    static Vertex of(Crest crest, List<Curve> curves, double resolution) {
        Parabola best = Parabola.of(crest, curves.get(0)).orElse(Parabola.FLAT);
        double height = height(crest, curves.get(0), Optional.of(best));
        double widest = crest.halfWidth() + 0.5;
        Span offsets = Span.at(best.offset());
        Span heights = Span.at(height);
        for (Curve curve : curves) {
            for (int i = 0; i < Crest.CORNERS; i++) {
                Crest corner = crest.corner(i, resolution / 2);
                Optional<Parabola> parabola = Parabola.of(corner, curve);
                double offset = parabola.map(Parabola::offset).orElse(widest);
                offsets = offsets.including(offset);
                offsets = parabola.isPresent() ? offsets : offsets.including(-offset);
                heights = heights.including(height(corner, curve, parabola));
            }
        }
        double offsetError = Math.min(offsets.reach(best.offset()), widest + Math.abs(best.offset()));
        double heightError = heights.reach(height);
        return new Vertex(
                best.offset(), offsetError, height, Double.isInfinite(heightError) ? Double.NaN : heightError);
    }

    /** The same on a scale 2^exponent times as fine. */
    Vertex scaled(int exponent) {
        return new Vertex(offset, offsetError, Math.scalb(height, exponent), Math.scalb(heightError, exponent));
    }

    private static double height(Crest crest, Curve curve, Optional<Parabola> parabola) {
        return curve.size(
                curve.scaled(crest.top()) + parabola.map(Parabola::rise).orElse(0.0));
    }
}
