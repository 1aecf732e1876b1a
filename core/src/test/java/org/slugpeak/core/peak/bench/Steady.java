package org.slugpeak.core.peak.bench;

import java.util.SplittableRandom;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.PeakFinder;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Condition;

/** Hours of readings while nothing is turned, after a rise that makes the finder wait for a fall. */
final class Steady extends Ear {

    private static final double RISE_SECONDS = 8;

    private int falsePasses;
    private int falseWrongWays;

    /**
     * Watches for a time and counts what was told.
     *
     * @param stretchSeconds after so long the next adjuster begins, with a rise again
     * @return false {@code passed} and false {@code wrong-way}
     */
    static int[] count(double rate, double noise, double hours, double stretchSeconds, long seed) {
        Steady told = new Steady();
        PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);
        SplittableRandom random = new SplittableRandom(seed);
        long readings = Math.round(hours * 3600 * rate);
        double begin = 0;
        for (long i = 0; i < readings; i++) {
            double seconds = i / rate;
            if (seconds - begin >= stretchSeconds) {
                begin = seconds;
                finder.restart();
            }
            double level = Math.min(1, 0.5 + 0.5 * (seconds - begin) / RISE_SECONDS);
            double value = level + noise * Meter.gaussian(random);
            finder.accept(Math.round(seconds * 1e9), value, Condition.OK);
        }
        return new int[] {told.falsePasses, told.falseWrongWays};
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        falsePasses++;
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        if (hint == Hint.WRONG_WAY) {
            falseWrongWays++;
        }
    }
}
