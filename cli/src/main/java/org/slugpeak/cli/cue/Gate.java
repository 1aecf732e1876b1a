package org.slugpeak.cli.cue;

/** How a steady voice is let through. Immutable; any thread may use it. */
enum Gate {
    /** Not at all. */
    SHUT(1, 0),
    /** All the time. */
    OPEN(1, 1),
    /** Four times a second: off the scale, or the negative side of a zero. */
    CHOPPED(0.25, 0.125),
    /** A short sign of life every two seconds. */
    PINGS(2, 0.15);

    private final double periodSeconds;
    private final double openSeconds;

    Gate(double periodSeconds, double openSeconds) {
        this.periodSeconds = periodSeconds;
        this.openSeconds = openSeconds;
    }

    double periodSeconds() {
        return periodSeconds;
    }

    double openSeconds() {
        return openSeconds;
    }

    boolean isOpenAt(double seconds) {
        return seconds % periodSeconds < openSeconds;
    }
}
