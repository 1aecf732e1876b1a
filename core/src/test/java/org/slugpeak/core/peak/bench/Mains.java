package org.slugpeak.core.peak.bench;

import java.util.SplittableRandom;

/**
 * Hum of the mains in readings that take no time: the rate folds it down to a beat. The mains wander about their nominal frequency, by
 * 0.02 Hz rms within about a minute (chosen; common practice, no source), so a rate that divides it gives a beat of a minute or so that
 * never repeats.
 */
final class Mains implements Disturbance {

    private static final double WANDER_HERTZ = 0.02;
    private static final double WANDER_SECONDS = 60;

    private final SplittableRandom random;
    private final double part;
    private final double hertz;
    private double offsetHertz;
    private double cycles;
    private double lastSeconds;

    private Mains(double part, double hertz, SplittableRandom random) {
        this.random = random;
        this.part = part;
        this.hertz = hertz;
        this.cycles = random.nextDouble();
        this.offsetHertz = WANDER_HERTZ * random.nextGaussian();
    }

    /** Hum of this part of the reading. */
    static Maker of(double part, double hertz) {
        return (random, rate) -> new Mains(part, hertz, random);
    }

    @Override
    public double read(double seconds, double level) {
        double since = seconds - lastSeconds;
        double keeps = Math.exp(-since / WANDER_SECONDS);
        offsetHertz = keeps * offsetHertz + WANDER_HERTZ * Math.sqrt(1 - keeps * keeps) * random.nextGaussian();
        cycles += (hertz + offsetHertz) * since;
        cycles -= Math.floor(cycles);
        lastSeconds = seconds;
        return level * (1 + part * Math.sin(2 * Math.PI * cycles));
    }
}
