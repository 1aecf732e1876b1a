package org.slugpeak.core.peak;

/** Turns readings so that what is sought lies upwards, and back. */
final class Orientation {

    private final Seek seek;
    private double polarity = 1;

    Orientation(Seek seek) {
        this.seek = seek;
    }

    void polarity(double sign) {
        polarity = sign;
    }

    boolean negative() {
        return polarity < 0;
    }

    private double sign() {
        return seek.direction() * polarity;
    }

    double upwards(double reading) {
        return sign() * reading;
    }

    /** Of an upwards value: the reading's size, negative where the reading has the unexpected sign. */
    double magnitude(double upwards) {
        return seek.direction() * upwards;
    }

    double asRead(double upwards) {
        return sign() * upwards;
    }

    int ofMagnitude(double slopeUpwards) {
        double slope = magnitude(slopeUpwards);
        return slope > 0 ? 1 : slope < 0 ? -1 : 0;
    }

    Seek seek() {
        return seek;
    }
}
