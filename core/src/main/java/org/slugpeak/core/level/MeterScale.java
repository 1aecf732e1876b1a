package org.slugpeak.core.level;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the readings at a meter point mean: they count from its resting reading, and by the law of its detector where that was
 * measured. What one point rests at, and how it detects, says nothing of another; where a point is met again both are known still.
 * One thread at a time.
 */
public final class MeterScale {

    /** What is known of one point. */
    private record Known(OptionalDouble rest, Optional<DetectorLaw> law) {

        static final Known NOTHING = new Known(OptionalDouble.empty(), Optional.empty());
    }

    private final Map<MeterPoint, Known> points = new EnumMap<>(MeterPoint.class);
    private Optional<MeterPoint> point = Optional.empty();
    private Known here = Known.NOTHING;

    /** Nothing is known yet, nor where the meter is. */
    public MeterScale() {}

    /**
     * Where the meter is.
     *
     * @return empty where nobody has said it
     */
    public Optional<MeterPoint> point() {
        return point;
    }

    /**
     * The meter is clipped to a point.
     *
     * @param newPoint where
     * @return whether it was at another one
     */
    public boolean moveTo(MeterPoint newPoint) {
        boolean moved = point.isPresent() && point.get() != newPoint;
        if (moved) {
            points.put(point.get(), here);
            here = points.getOrDefault(newPoint, Known.NOTHING);
        }
        point = Optional.of(newPoint);
        return moved;
    }

    /**
     * The resting reading.
     *
     * @param value as read, in the unit of the readings
     */
    public void takeRest(double value) {
        here = new Known(OptionalDouble.of(value), here.law());
    }

    /**
     * The law of the detector.
     *
     * @param law empty where none is known any more
     */
    public void takeLaw(Optional<DetectorLaw> law) {
        here = new Known(here.rest(), law);
    }

    /**
     * Whether the law of the detector was measured.
     *
     * @return true where it is known
     */
    public boolean isLawKnown() {
        return here.law().isPresent();
    }

    /**
     * Whether the resting reading was taken.
     *
     * @return true where it is known
     */
    public boolean isRestKnown() {
        return here.rest().isPresent();
    }

    /**
     * The resting reading.
     *
     * @return in the unit of the readings; 0 where it is not known
     */
    public double rest() {
        return here.rest().orElse(0);
    }

    /**
     * The level that is read.
     *
     * @param value as read, in the unit of the readings
     * @return above rest, in that unit, of either sign
     */
    public double aboveRest(double value) {
        return value - rest();
    }

    /**
     * What a straight detector without a rest would show.
     *
     * @param value as read, in the unit of the readings
     * @return in that unit, with the sign of the level above rest
     */
    public double straight(double value) {
        return straightAboveRest(aboveRest(value));
    }

    /**
     * The same from the rest.
     *
     * @param level above rest, in the unit of the readings, of either sign
     * @return in that unit, with that sign
     */
    public double straightAboveRest(double level) {
        return here.law()
                .map(it -> Math.copySign(it.straight(Math.abs(level)), level))
                .orElse(level);
    }

    /**
     * {@link #straight} backwards.
     *
     * @param straight what a straight detector without a rest would show, in the unit of the readings
     * @return as read, in that unit
     */
    public double read(double straight) {
        return levelAboveRest(straight) + rest();
    }

    private double levelAboveRest(double straight) {
        return here.law()
                .map(it -> Math.copySign(it.level(Math.abs(straight)), straight))
                .orElse(straight);
    }

    /**
     * How far readings spread.
     *
     * @param straight around which level, in the unit of the readings
     * @param sigma one sigma of it, in that unit
     * @return one sigma of what is read, in that unit
     */
    public double readSpread(double straight, double sigma) {
        return here.law().isEmpty() ? sigma : Math.abs(levelAboveRest(straight + sigma) - levelAboveRest(straight));
    }
}
