package org.slugpeak.core.peak.bench;

import java.util.Locale;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.PeakFinder;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.reading.Condition;

/** One rest: what is told while nothing is turned. */
final class Rest extends Ear {

    /**
     * What was told, none of it true.
     *
     * @param passed at rest
     * @param again of those, how many came after a return: the hand was turned round more than once
     * @param wrongWay at rest
     * @param inRise passes and wrong ways while the level rose
     */
    record Count(double passed, double again, double wrongWay, double inRise) {

        static final Count NONE = new Count(0, 0, 0, 0);

        Count plus(Count other) {
            return new Count(
                    passed + other.passed, again + other.again, wrongWay + other.wrongWay, inRise + other.inRise);
        }

        Count times(double factor) {
            return new Count(factor * passed, factor * again, factor * wrongWay, factor * inRise);
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%8.1f %8.1f %8.1f %8.1f", passed, again, wrongWay, inRise);
        }
    }

    private static final double RISE_SECONDS = 8;

    private double level;
    private boolean returned;
    private int passed;
    private int again;
    private int wrongWay;
    private int inRise;

    private Rest() {}

    /**
     * Watches for a time and counts.
     *
     * @param everySeconds after so long the next adjuster begins, with a rise again
     */
    static Count of(Disturbance disturbance, double rate, double lastsSeconds, double everySeconds) {
        Rest told = new Rest();
        PeakFinder finder = PeakFinder.create(PeakSettings.defaults(), told);
        long readings = Math.round(lastsSeconds * rate);
        double begin = 0;
        for (long i = 0; i < readings; i++) {
            double seconds = i / rate;
            if (seconds - begin >= everySeconds) {
                begin = seconds;
                told.returned = false;
                finder.restart();
            }
            told.level = Math.min(1, 0.5 + 0.5 * (seconds - begin) / RISE_SECONDS);
            finder.accept(Math.round(seconds * 1e9), disturbance.read(seconds, told.level), Condition.OK);
        }
        return new Count(told.passed, told.again, told.wrongWay, told.inRise);
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        if (level < 1) {
            inRise++;
            return;
        }
        passed++;
        again += returned ? 1 : 0;
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        returned = true;
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        if (hint == Hint.WRONG_WAY && level < 1) {
            inRise++;
        } else if (hint == Hint.WRONG_WAY) {
            wrongWay++;
        }
    }
}
