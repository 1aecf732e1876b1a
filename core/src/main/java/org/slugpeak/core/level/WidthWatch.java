package org.slugpeak.core.level;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Compares how wide each peak is with the earlier ones of the session. A gain control that acts leaves of each decibel only a
 * part s (0.35 in the usual set, from memory), so that the flanks seem wider: by 2 at 1 dB below the top, by 2.5 at 3 dB, and the
 * level there moves 3 to 4 times as slowly.
 *
 * <p>Where the slug stands is not known, only when. A single tuned circuit, and one of a coupled pair while the other stays, gives
 * V = V0 / sqrt(1 + x^2), so that x = sqrt((V0 / V)^2 - 1) is how far away the slug is, in half-widths. The flank between x = 1
 * and x = 0.3 (3.0 and 0.4 dB down) is cut into equal steps of x, and the middle one of the times that they took is the width, in
 * seconds per half-width: a pause of the hand in one step does not count, and one at the top never does. Only the rise is timed,
 * because a hand that obeys falls by tenths of a decibel only.
 *
 * <p>The hand's speed remains in it, and differs by 2 from peak to peak; so a wide peak counts only where the reading also stands
 * higher than at all earlier peaks, which a signal that is too strong always makes it do. What it cannot see: a flat top (it looks
 * like a hand that pauses there), a rise that began less than 1.3 dB down, and a signal that was too strong from the beginning.
 *
 * <p>One thread at a time.
 */
final class WidthWatch {

    /** Where the flank ends, and how it is cut, in half-widths. */
    private static final double INNER = 0.3;

    private static final double STEP = 0.1;
    private static final int STEPS = 7;

    /** Fewer have no middle that a pause could not be in. */
    private static final int ENOUGH_STEPS = 3;

    /** The middle of fewer peaks is no middle. */
    private static final int ENOUGH_PEAKS = 3;

    /**
     * So many times as wide as the middle of the earlier ones: s = 0.35 makes it 1.8 to 2.3 with a steady hand on the simulated bench,
     * and a clean peak 0.8 to 1.4. Chosen also on simulated hands whose speed differs by 2 from peak to
     * peak, and by half as much within one.
     */
    private static final double WIDE = 1.7;

    /** A peak that stands higher is not taken for a usual one when it is wider than this. */
    private static final double WIDER = 1.4;

    /** Higher than all earlier peaks by this factor (3 dB): five times the signal leaves as much where s is 0.35 (5 to that power is 1.8). */
    private static final double HIGHER = 1.4;

    /** Whether two adjusters can be compared. */
    private enum Kind {
        TRIMMER,
        PADDER,
        /** Slugs, and whatever has no telling name. */
        OTHER;

        static Kind of(String adjuster) {
            String name = adjuster.toLowerCase(Locale.ROOT);
            return name.contains("trimmer") ? TRIMMER : name.contains("padder") ? PADDER : OTHER;
        }
    }

    /**
     * A peak that was crossed.
     *
     * @param width seconds per half-width
     * @param top as read, above rest
     */
    private record Peak(double width, double top) {}

    private final Map<Kind, List<Peak>> earlier = new EnumMap<>(Kind.class);
    private final Approach approach = new Approach();
    private Kind kind = Kind.OTHER;
    private boolean judged;

    void begin(String adjuster) {
        kind = Kind.of(adjuster);
        approach.clear();
        judged = false;
    }

    /** What comes next need not follow on what came before. */
    void gap() {
        approach.clear();
    }

    /** Takes a smoothed level on the finder's scale, 0 or more. */
    void level(long tNanos, double level) {
        if (level > 0) {
            approach.add(tNanos, level);
        }
    }

    /**
     * The level has passed a maximum; only the first of an adjuster is judged, for afterwards the hand goes to and fro.
     *
     * @param best on the finder's scale, positive
     * @param asRead the same above rest, as the meter shows it
     * @return how many times as wide as the earlier ones it was; empty where that is nothing to talk about
     */
    OptionalDouble passed(double best, double asRead) {
        double width = judged ? Double.NaN : width(best);
        if (Double.isNaN(width)) {
            return OptionalDouble.empty();
        }
        judged = true;
        List<Peak> peaks = earlier.computeIfAbsent(kind, none -> new ArrayList<>());
        double times = width / middle(peaks);
        double highest = peaks.stream().mapToDouble(Peak::top).max().orElse(asRead);
        if (asRead > HIGHER * highest && times > WIDER) {
            return peaks.size() >= ENOUGH_PEAKS && times > WIDE ? OptionalDouble.of(times) : OptionalDouble.empty();
        }
        peaks.add(new Peak(width, asRead));
        return OptionalDouble.empty();
    }

    private static double middle(List<Peak> peaks) {
        return StatUtils.percentile(peaks.stream().mapToDouble(Peak::width).toArray(), 50);
    }

    /** Seconds per half-width on the flank; NaN where too little of it was seen. */
    private double width(double best) {
        double[] steps = new double[STEPS];
        double nearer = approach.secondsAt(at(best, INNER));
        int seen = 0;
        while (seen < STEPS) {
            double farther = approach.secondsAt(at(best, INNER + (seen + 1) * STEP));
            if (!(farther < nearer)) {
                break;
            }
            steps[seen++] = (nearer - farther) / STEP;
            nearer = farther;
        }
        return seen < ENOUGH_STEPS ? Double.NaN : StatUtils.percentile(steps, 0, seen, 50);
    }

    /** The level so many half-widths from the top. */
    private static double at(double top, double halfWidths) {
        return top / Math.sqrt(1 + halfWidths * halfWidths);
    }
}
