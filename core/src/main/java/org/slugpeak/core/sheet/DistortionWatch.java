package org.slugpeak.core.sheet;

import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.slugpeak.core.session.Sound;

/** What is heard of the tone's harmonics while a setting is read. One thread at a time. */
final class DistortionWatch {

    /** As long as a reading is looked at; what was heard before it was set counts no more. */
    private static final long SPAN_NANOS = 2_000_000_000L;

    private final Queue<Sound.Purity> heard = new ArrayDeque<>();

    /**
     * What was heard.
     *
     * @param ratio mean of the harmonics over the tone
     * @param sigma one standard deviation of that mean
     */
    record Distortion(double ratio, double sigma) {}

    /** The generator was set, or the tone has gone. */
    void forget() {
        heard.clear();
    }

    void hear(Sound.Purity it) {
        heard.add(it);
        while (it.tNanos() - heard.element().tNanos() > SPAN_NANOS) {
            heard.remove();
        }
    }

    /** Empty where the source is no sound, or no tone was heard. */
    Optional<Distortion> distortion() {
        SummaryStatistics all = new SummaryStatistics();
        heard.forEach(it -> all.addValue(it.distortion()));
        double sigma = all.getStandardDeviation() / Math.sqrt((double) all.getN());
        return all.getN() < 2 ? Optional.empty() : Optional.of(new Distortion(all.getMean(), sigma));
    }
}
