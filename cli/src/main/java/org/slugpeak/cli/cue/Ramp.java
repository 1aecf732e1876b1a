package org.slugpeak.cli.cue;

/** A level that never jumps: it moves to its goal in {@value #SECONDS} s along half a cosine. One thread at a time. */
final class Ramp {

    /** From silence to full, so that nothing startles a hand near high tension. */
    static final double SECONDS = 0.05;

    private final double step;
    private double position;

    Ramp(double framesPerSecond) {
        step = 1 / (SECONDS * framesPerSecond);
    }

    /** One frame on the way to a goal between 0 and 1. */
    double towards(double goal) {
        position = position < goal ? Math.min(goal, position + step) : Math.max(goal, position - step);
        return shape(position);
    }

    boolean isSilent() {
        return position == 0;
    }

    static double shape(double position) {
        return 0.5 - 0.5 * Math.cos(Math.PI * position);
    }
}
