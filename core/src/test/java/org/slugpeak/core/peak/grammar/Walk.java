package org.slugpeak.core.peak.grammar;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
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

    public Walk {
        legs = List.copyOf(legs);
    }

    /** Walks of one to five legs at 10 to 200 readings/s. */
    public static Arbitrary<Walk> any() {
        Arbitrary<Leg> legs = Combinators.combine(
                        Traces.places(-4, 4), Traces.decimals(0.5, 6, 2), Traces.decimals(0.1, 3, 0.1))
                .as(Leg::new);
        Arbitrary<Meter> meters = Combinators.combine(
                        Arbitraries.of(50.0, 10.0, 20.0, 100.0, 200.0), Traces.noise(0.02))
                .as((perSecond, sigma) -> Meter.of(perSecond).withNoise(sigma));
        return Combinators.combine(
                        Traces.heights(),
                        Traces.places(-4, 4),
                        legs.list().ofMinSize(1).ofMaxSize(5),
                        meters)
                .as((height, from, list, meter) ->
                        new Walk(height, from, list, meter.withNoise(meter.noise() * height)));
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
