package org.slugpeak.cli.page;

/**
 * What a browser shows at one moment. Immutable; any thread may use it.
 *
 * @param number counts up with every record
 * @param told what is to be done, and where the reading stands
 * @param spot the last reading, for the trend
 * @param work what has come of the session so far; the same object until there is more
 */
record PageState(long number, Told told, Spot spot, WorkDone work) {

    /**
     * A point of the trend.
     *
     * @param tNanos from the first reading
     * @param height in the unit of the readings, up is more; NaN where there is none to be believed
     */
    record Spot(long tNanos, double height) {

        static final Spot NONE = new Spot(0, Double.NaN);
    }
}
