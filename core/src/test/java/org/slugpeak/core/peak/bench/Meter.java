package org.slugpeak.core.peak.bench;

import java.util.SplittableRandom;

/** Reads a resonance of height one with everything that a family says is wrong with it. */
final class Meter {

    private static final int OCTAVES = 10;

    private final Family family;
    private final SplittableRandom random;
    private final double phase;
    private final double[] octaves = new double[OCTAVES];
    private long readings;

    Meter(Family family, SplittableRandom random) {
        this.family = family;
        this.random = random;
        this.phase = random.nextDouble(2 * Math.PI);
        for (int i = 0; i < OCTAVES; i++) {
            octaves[i] = gaussian();
        }
    }

    /** What the set gives at an angle from its optimum, free of noise and drift. */
    static double truth(Family family, double degrees) {
        double u = degrees / family.halfWidthDegrees();
        return Math.pow(1 + u * u, -0.5 * family.law().avcPower());
    }

    /** Seconds to the next reading. */
    double interval() {
        double usual = 1 / family.rate();
        double jitter = family.law().jitter();
        double seconds = usual * (1 + (jitter > 0 ? random.nextDouble(-jitter, jitter) : 0));
        while (family.law().dropOuts() > 0 && random.nextDouble() < family.law().dropOuts()) {
            seconds += usual;
        }
        return seconds;
    }

    double read(double seconds, double degrees) {
        Family.Law law = family.law();
        double level = truth(family, degrees) * Math.pow(10, -law.driftDbPerMinute() * seconds / 60 / 20);
        double noise = family.noise() * gaussian() * (law.proportional() ? level : 1);
        double hum = law.hum() * Math.sin(2 * Math.PI * law.humHertz() * seconds + phase);
        double value = level * (1 + hum) + noise + law.flicker() * flicker();
        if (law.spikes() > 0 && random.nextDouble() < law.spikes()) {
            value *= 1 + random.nextDouble(-1, 2);
        }
        return law.step() > 0 ? Math.rint(value / law.step()) * law.step() : value;
    }

    /** Sum of octaves, each renewed half as often as the one before (Voss's method): 1/f within those octaves. */
    private double flicker() {
        if (family.law().flicker() == 0) {
            return 0;
        }
        int renewed = Math.min(Long.numberOfTrailingZeros(++readings), OCTAVES - 1);
        octaves[renewed] = gaussian();
        double sum = 0;
        for (double octave : octaves) {
            sum += octave;
        }
        return sum;
    }

    private double gaussian() {
        return gaussian(random);
    }

    static double gaussian(SplittableRandom random) {
        double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
        return radius * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
