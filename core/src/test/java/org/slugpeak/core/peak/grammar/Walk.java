package org.slugpeak.core.peak.grammar;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * A hand that walks to and fro over one resonance without listening to anybody: here it is known when it turned.
 *
 * @param height of the resonance
 * @param from where the hand begins, half-widths from the top
 * @param legs one after the other
 * @param meter what reads
 */
public record Walk(double height, double from, List<Leg> legs, Meter meter) {

    /**
     * A walk to one place, and a rest there.
     *
     * @param to half-widths from the top
     * @param seconds how long the way takes
     * @param restSeconds how long the hand stays
     */
    public record Leg(double to, double seconds, double restSeconds) {}

    private static final double LEAST_REST_SECONDS = 0.1;

    public Walk {
        legs = List.copyOf(legs);
    }

    /** Walks of one to five legs at 10 to 200 readings/s. */
    public static Arbitrary<Walk> any() {
        Arbitrary<Leg> legs = Combinators.combine(
                        Traces.places(-4, 4),
                        Traces.decimals(0.5, 6, 2),
                        Traces.decimals(LEAST_REST_SECONDS, 3, LEAST_REST_SECONDS))
                .as(Leg::new);
        return Combinators.combine(
                        Traces.heights(),
                        Traces.places(-4, 4),
                        legs.list().ofMinSize(1).ofMaxSize(5),
                        meters(10, 0.02))
                .as(Walk::of);
    }

    /** Walks from side to side, over the top with every leg, of one leg to so many, at 20 to 200 readings/s with modest noise. */
    public static Arbitrary<Walk> crossings(int mostLegs) {
        Arbitrary<Leg> legs = Combinators.combine(Traces.places(1, 4), Traces.decimals(1, 6, 3))
                .as((place, seconds) -> new Leg(place, seconds, LEAST_REST_SECONDS));
        return Combinators.combine(
                        Traces.heights(),
                        Traces.places(1, 4),
                        legs.list().ofMinSize(1).ofMaxSize(mostLegs),
                        meters(20, 0.01))
                .as((height, place, list, meter) -> of(height, -place, sideToSide(list), meter));
    }

    private static List<Leg> sideToSide(List<Leg> legs) {
        List<Leg> turned = new ArrayList<>();
        for (Leg leg : legs) {
            double side = turned.size() % 2 == 0 ? 1 : -1;
            turned.add(new Leg(side * leg.to(), leg.seconds(), leg.restSeconds()));
        }
        return turned;
    }

    private static Arbitrary<Meter> meters(double leastPerSecond, double mostNoise) {
        return Combinators.combine(Traces.rates().filter(r -> r >= leastPerSecond && r <= 200), Traces.noise(mostNoise))
                .as((perSecond, part) -> Meter.of(perSecond).withNoise(part));
    }

    /** The meter's noise is a part of the height. */
    private static Walk of(double height, double from, List<Leg> legs, Meter meter) {
        return new Walk(height, from, legs, meter.withNoise(meter.noise() * height));
    }

    /** What the meter shows. */
    public Trace trace() {
        List<Piece> pieces = new ArrayList<>();
        double place = from;
        for (Leg leg : legs) {
            pieces.add(new Piece(new Shape.Top(height, place, leg.to()), leg.seconds(), meter));
            place = leg.to();
            pieces.add(new Piece(new Shape.Top(height, place, place), leg.restSeconds(), meter));
        }
        return new Trace(pieces);
    }

    /** How often the hand set out in a new direction, the first time included. */
    public int turns() {
        int turns = 0;
        double place = from;
        double before = 0;
        for (Leg leg : legs) {
            double direction = Math.signum(leg.to() - place);
            if (direction != 0 && direction != before) {
                turns++;
                before = direction;
            }
            place = leg.to();
        }
        return turns;
    }

    /** When the level was highest of its surroundings, in seconds: at the top, or where the hand turned away before it. */
    public List<Double> maxima() {
        List<Double> maxima = new ArrayList<>();
        double place = from;
        double seconds = 0;
        boolean rose = false;
        for (Leg leg : legs) {
            double way = leg.to() - place;
            boolean rises = place * way < 0;
            if (rose && way != 0 && !rises) {
                maxima.add(seconds);
            } else if (rises && place * leg.to() < 0) {
                maxima.add(seconds - leg.seconds() * place / way);
            }
            rose = way == 0 ? rose : rises && place * leg.to() >= 0;
            place = leg.to();
            seconds += leg.seconds() + leg.restSeconds();
        }
        return maxima;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(
                "top " + Words.volts(height) + meter + ": from " + Words.number(from) + " half-widths");
        for (Leg leg : legs) {
            text.append(" to " + Words.number(leg.to()) + " in " + Words.seconds(leg.seconds()) + ", rest "
                    + Words.seconds(leg.restSeconds()));
            text.append(';');
        }
        return text.toString();
    }
}
