package org.slugpeak.bridge.source;

/**
 * Tells from the digits of a meter's readings that it changed its range by itself: the step of the last digit grows or
 * shrinks tenfold. An instrument that leaves out trailing zeros shows no range this way, so nothing is said before a padded
 * number was seen. One thread at a time.
 */
public final class RangeWatch {

    /** Half a decade: a change of range moves the last digit by a whole one. */
    private static final double FACTOR = 3;

    private double resolution = Double.NaN;
    private boolean padded;

    /** Forgets everything. */
    public void begin() {
        resolution = Double.NaN;
        padded = false;
    }

    /**
     * Looks at the next field.
     *
     * @param field as the meter wrote it
     * @return whether the meter has changed its range since the last number
     */
    public boolean changed(MeterField field) {
        if (field.resolution().isEmpty()) {
            return false;
        }
        double before = resolution;
        resolution = field.resolution().getAsDouble();
        padded |= field.padded();
        return padded && (resolution > FACTOR * before || before > FACTOR * resolution);
    }
}
