package org.slugpeak.core.peak.bench;

import java.util.List;
import java.util.SplittableRandom;

/**
 * A kind of stream that went wrong once, and what is counted.
 *
 * @param name a few words
 * @param counted what {@link Play#run} counts, in this order; none of it should happen
 * @param play one run
 */
record Trouble(String name, List<String> counted, Play play) {

    /** Plays one run. */
    interface Play {
        /** Counts, for each thing counted, how often it happened. */
        int[] run(SplittableRandom random);
    }

    static int count(boolean happened) {
        return happened ? 1 : 0;
    }

    /** Whether a best is off the truth by more than what is allowed on the way back. */
    static boolean off(double best, double truth) {
        return !(Math.abs(20 * Math.log10(best / truth)) <= 0.15);
    }
}
