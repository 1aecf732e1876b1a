package org.slugpeak.core.peak.bench;

import java.util.SplittableRandom;

/**
 * Two-level noise, as a bad junction makes it: it stays for a while and jumps (a random telegraph; the time on a level is exponential).
 * The mean time on a level is drawn between 0.1 and 10 s, anew every ten minutes.
 */
final class Popcorn implements Disturbance {

    private static final double SHORTEST_SECONDS = 0.1;
    private static final double LONGEST_SECONDS = 10;
    private static final double SAME_SECONDS = 600;

    private final SplittableRandom random;
    private final double half;
    private double side = 1;
    private double meanSeconds;
    private double drawAt;
    private double jumpAt;

    private Popcorn(double part, SplittableRandom random) {
        this.random = random;
        this.half = part / 2;
    }

    /** Levels this part of the reading apart. */
    static Maker of(double part) {
        return (random, rate) -> new Popcorn(part, random);
    }

    @Override
    public double read(double seconds, double level) {
        if (seconds >= drawAt) {
            drawAt = seconds + SAME_SECONDS;
            meanSeconds = SHORTEST_SECONDS * Math.pow(LONGEST_SECONDS / SHORTEST_SECONDS, random.nextDouble());
            jumpAt = seconds + meanSeconds * random.nextExponential();
        }
        while (seconds >= jumpAt) {
            side = -side;
            jumpAt += meanSeconds * random.nextExponential();
        }
        return level * (1 + half * side);
    }
}
