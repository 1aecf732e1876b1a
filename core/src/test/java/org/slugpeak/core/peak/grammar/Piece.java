package org.slugpeak.core.peak.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.slugpeak.core.reading.Reading;

/**
 * A part of a stream in which one thing happens.
 *
 * @param shape what the level does
 * @param seconds how long; positive
 * @param meter what reads it
 */
public record Piece(Shape shape, double seconds, Meter meter) {

    /** How many readings it has. */
    public int count() {
        return shape.isSilent() ? 0 : (int) Math.max(1, Math.rint(seconds * meter.perSecond()));
    }

    /** The readings, the first of them one interval after the beginning. */
    List<Reading> readings(double beginSeconds, SplittableRandom random) {
        List<Reading> taken = new ArrayList<>();
        int count = count();
        for (int i = 0; i < count; i++) {
            double level = shape.at(i, count);
            double value = shape.isExact() ? level : meter.read(level, random);
            taken.add(Reading.of(Math.round(1e9 * (beginSeconds + (i + 1) / meter.perSecond())), finite(value)));
        }
        return meter.stamps().stamp(taken);
    }

    /** What stands for a value that a double cannot hold. */
    private static double finite(double value) {
        return Math.max(-Double.MAX_VALUE, Math.min(value, Double.MAX_VALUE));
    }

    /** The same over another transport. */
    Piece over(Stamps stamps) {
        return new Piece(shape, seconds, new Meter(meter.perSecond(), meter.noise(), meter.digit(), stamps));
    }

    @Override
    public String toString() {
        return shape + ", " + Words.seconds(seconds) + (shape.isSilent() ? "" : meter);
    }
}
