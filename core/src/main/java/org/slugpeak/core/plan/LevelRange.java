package org.slugpeak.core.plan;

/**
 * Where the reading should stay while work goes on; refused with an {@link IllegalArgumentException} unless it ascends from
 * above zero. Immutable; any thread may use it.
 *
 * @param low least magnitude, in the unit
 * @param high greatest magnitude, in the unit
 * @param unit of both, for example {@code V}
 */
public record LevelRange(double low, double high, String unit) {

    /** The unit in which the window can be watched over. */
    public static final String VOLTS = "V";

    public LevelRange {
        if (!(0 < low && low < high)) {
            throw new IllegalArgumentException("a working level ascends from above zero");
        }
    }

    /** Volts and millivolts are understood; of anything else nobody knows how many volts it is: infinite. */
    double highVolts() {
        return volts(high);
    }

    /** As {@link #highVolts}, of the lower end. */
    double lowVolts() {
        return volts(low);
    }

    private double volts(double end) {
        return switch (unit) {
            case VOLTS -> end;
            case "mV" -> end / 1e3;
            default -> Double.POSITIVE_INFINITY;
        };
    }
}
