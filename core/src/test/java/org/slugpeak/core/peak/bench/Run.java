package org.slugpeak.core.peak.bench;

import java.util.SplittableRandom;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakListener;

/** One run: a hand, a slug, a meter and a watcher, until held or until patience ends. */
final class Run implements PeakListener {

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
    private final Hand hand;
    private final Meter meter;
    private final double side;
    private double highest;
    private boolean crossed;
    private double flaggedDb = Double.NaN;
    private int falsePasses;
    private int passes;

    private Run(Family family, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        this.family = family;
        double far = random.nextDouble(1.2, 3) * family.halfWidthDegrees();
        double start = random.nextBoolean() ? far : -far;
        this.side = Math.signum(start);
        this.hand = new Hand(family, start, random.split());
        this.meter = new Meter(family, random.split());
    }

    static Outcome of(Family family, long seed, Watcher.Maker maker) {
        Run run = new Run(family, seed);
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
        hand.passed(tNanos, best, bestAtNanos, dropDb);
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        hand.returned(tNanos, value, lossDb);
    }

    @Override
    public void held(long tNanos, double value, double lossDb) {
        hand.held(tNanos, value, lossDb);
    }

    @Override
    public void twoPeaks(long tNanos, double first, double second, double dipDb) {
        hand.twoPeaks(tNanos, first, second, dipDb);
    }

    @Override
    public void noPeak(long tNanos, NoPeakReason reason) {
        hand.noPeak(tNanos, reason);
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        hand.hint(tNanos, hint, amount);
    }
}
