package org.slugpeak.core.peak.grammar;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Draws streams. What is drawn shrinks to few, short, plain pieces: what stands first in a list here, or the number shrunk towards. */
public final class Traces {

    private static final int MOST_PIECES = 8;
    /** Enough to fill every window of a finder at 50 readings/s; keeps a stream of eight pieces quick. */
    private static final double MOST_READINGS = 1500;

    private static final double[] EXTREMES = {
        0,
        -0.0,
        Double.MIN_VALUE,
        -Double.MIN_VALUE,
        Double.MIN_NORMAL,
        1e-300,
        1e300,
        Double.MAX_VALUE,
        -Double.MAX_VALUE
    };

    private Traces() {}

    /** Any stream of finite readings. */
    public static Arbitrary<Trace> any() {
        return of(pieces(anyLevels(), meters(rates())));
    }

    /** Any stream without pauses, at two readings/s or more. */
    public static Arbitrary<Trace> unbroken() {
        return of(pieces(anyLevels(), meters(rates())).filter(p -> !p.shape().isSilent()));
    }

    /** Streams of plausible levels, as they come from a set on a bench. */
    public static Arbitrary<Trace> plausible() {
        return of(pieces(levels(), meters(rates())));
    }

    private static Arbitrary<Trace> of(Arbitrary<Piece> pieces) {
        return pieces.list().ofMinSize(1).ofMaxSize(MOST_PIECES).map(Trace::new);
    }

    private static Arbitrary<Piece> pieces(Arbitrary<Double> levels, Arbitrary<Meter> meters) {
        return Combinators.combine(shapes(levels), decimals(0.1, 8, 1), meters)
                .as((shape, seconds, meter) ->
                        new Piece(shape, Math.min(seconds, MOST_READINGS / meter.perSecond()), meter));
    }

    private static Arbitrary<Shape> shapes(Arbitrary<Double> levels) {
        Arbitrary<Shape> rest = levels.map(Shape.Rest::new);
        Arbitrary<Shape> run = levels.map(Shape.Run::new);
        Arbitrary<Shape> ramp = Combinators.combine(levels, levels).as(Shape.Ramp::new);
        Arbitrary<Shape> step = Combinators.combine(levels, levels).as(Shape.Step::new);
        Arbitrary<Shape> top =
                Combinators.combine(levels, places(-5, 5), places(-5, 5)).as(Shape.Top::new);
        Arbitrary<Shape> drift = Combinators.combine(levels, decimals(-3, 3, 1)).as(Shape.Drift::new);
        Arbitrary<Shape> spike = Combinators.combine(levels, Arbitraries.of(2.0, 0.0, 10.0, -1.0, 1000.0))
                .as(Shape.Spike::new);
        return Arbitraries.frequencyOf(
                Tuple.of(4, rest),
                Tuple.of(2, Arbitraries.just(new Shape.Run(0))),
                Tuple.of(1, run),
                Tuple.of(4, top),
                Tuple.of(2, ramp),
                Tuple.of(1, step),
                Tuple.of(1, drift),
                Tuple.of(1, spike),
                Tuple.of(1, Arbitraries.just(new Shape.Gap())));
    }

    private static Arbitrary<Meter> meters(Arbitrary<Double> rates) {
        return Combinators.combine(rates, noise(0.05), Arbitraries.of(0.0, 0.001, 0.01), stamps())
                .as(Meter::new);
    }

    /** Transports, the plain one first. */
    public static Arbitrary<Stamps> stamps() {
        return Arbitraries.frequencyOf(
                Tuple.of(6, Arbitraries.just(new Stamps.Exact())),
                Tuple.of(2, packets(0)),
                Tuple.of(1, packets(50_000)),
                Tuple.of(2, Arbitraries.of(0.1, 1.0).map(Stamps.Coarse::new)),
                Tuple.of(1, Arbitraries.of(0.005, 0.05, 0.5).map(Stamps.Late::new)));
    }

    /** Packets of 1 to 20 readings, this far apart. */
    public static Arbitrary<Stamps> packets(long apartNanos) {
        return Arbitraries.integers().between(1, 20).map(readings -> new Stamps.Packets(readings, apartNanos));
    }

    /** Readings a second, two or more. */
    public static Arbitrary<Double> rates() {
        return Arbitraries.of(50.0, 10.0, 2.0, 5.0, 20.0, 100.0, 200.0, 500.0, 1000.0);
    }

    /** No noise, or up to so much. */
    static Arbitrary<Double> noise(double most) {
        return Arbitraries.of(0.0, most / 10, most / 100, most / 3, most);
    }

    private static Arbitrary<Double> levels() {
        return Arbitraries.frequencyOf(Tuple.of(8, heights()), Tuple.of(1, Arbitraries.of(0.0, -0.5, 5.0, 0.001)));
    }

    private static Arbitrary<Double> anyLevels() {
        Arbitrary<Double> extremes =
                Arbitraries.integers().between(0, EXTREMES.length - 1).map(i -> EXTREMES[i]);
        Arbitrary<Double> finite = Arbitraries.doubles().filter(Double::isFinite);
        return Arbitraries.frequencyOf(
                Tuple.of(8, heights()), Tuple.of(2, decimals(-2, 2, 1)), Tuple.of(1, extremes), Tuple.of(1, finite));
    }

    /** Volts as a set on a bench gives them. */
    public static Arbitrary<Double> heights() {
        return Arbitraries.doubles().between(0.05, 2).ofScale(2).shrinkTowards(1);
    }

    static Arbitrary<Double> places(double least, double most) {
        return decimals(least, most, least < 0 ? 0 : 3);
    }

    static Arbitrary<Double> decimals(double least, double most, double plain) {
        return Arbitraries.doubles().between(least, most).ofScale(1).shrinkTowards(plain);
    }
}
