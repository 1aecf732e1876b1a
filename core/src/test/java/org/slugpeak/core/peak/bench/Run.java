package org.slugpeak.core.peak.bench;

import java.util.SplittableRandom;

/** One run: a hand, a slug, a meter and a watcher, until held or until patience ends. */
final class Run extends Obeyed {

    /**
     * What came of a run.
     *
     * @param held whether it ended in held
     * @param seconds until held, or until given up
     * @param lossDb below the true optimum at the end
     * @param flaggedDb below the true maximum when the first pass was told after the maximum was crossed; NaN if never
     * @param falsePasses how often a pass was told before the maximum was ever crossed
     * @param passes how often a pass was told
     * @param bestBias best over the highest true level visited, less one
     */
    record Outcome(
            boolean held,
            double seconds,
            double lossDb,
            double flaggedDb,
            int falsePasses,
            int passes,
            double bestBias) {}

    private static final double GIVE_UP_SECONDS = 90;
    private static final double STEP_SECONDS = 0.002;

    private final Family family;
    private final Meter meter;
    private final double side;
    private double highest;
    private boolean crossed;
    private double flaggedDb = Double.NaN;
    private int falsePasses;
    private int passes;

    private Run(Family family, double startDegrees, SplittableRandom random) {
        super(new Hand(family, startDegrees, random.split()));
        this.family = family;
        this.side = Math.signum(startDegrees);
        this.meter = new Meter(family, random.split());
    }

    /** From outside, on either side. */
    static double start(Family family, SplittableRandom random) {
        double far = random.nextDouble(1.2, 3) * family.halfWidthDegrees();
        return random.nextBoolean() ? far : -far;
    }

    static Outcome of(Family family, long seed, Watcher.Maker maker) {
        SplittableRandom random = new SplittableRandom(seed);
        Run run = new Run(family, start(family, random), random);
        return run.go(maker.make(run));
    }

    private Outcome go(Watcher watcher) {
        double now = 0;
        double next = meter.interval();
        while (!hand.hasHeld() && now < GIVE_UP_SECONDS) {
            double step = Math.min(STEP_SECONDS, next - now);
            now += step;
            hand.advance(now, step);
            look();
            if (now >= next) {
                watcher.accept(Math.round(now * 1e9), meter.read(now, hand.slugDegrees()));
                next = now + meter.interval();
            }
        }
        return new Outcome(hand.hasHeld(), now, lossDb(), flaggedDb, falsePasses, passes, watcher.best() / highest - 1);
    }

    private void look() {
        highest = Math.max(highest, Meter.truth(family, hand.slugDegrees()));
        crossed |= hand.slugDegrees() * side <= 0;
    }

    private double lossDb() {
        return -20 * Math.log10(Meter.truth(family, hand.slugDegrees()));
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        passes++;
        if (!crossed) {
            falsePasses++;
        } else if (Double.isNaN(flaggedDb)) {
            flaggedDb = lossDb();
        }
        super.passed(tNanos, best, bestAtNanos, dropDb);
    }
}
