package org.slugpeak.cli.report;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.slugpeak.core.curve.Estimate;
import org.slugpeak.core.session.Adjuster;

/**
 * What each adjuster gained in a session, all rounds together, or where it was left around a zero; each with one sigma. Of a gain that
 * is the root of the sum of squares (JCGM 100:2008, 5.1.2) of noise and last digit at both of its levels, round by round, and of what
 * finding it once more brought: the gain of the last round is taken as the half-width of a rectangle (4.3.7). Only what was done counts.
 * All methods are pure.
 */
final class AdjusterFigures {

    private static final double ROOT_3 = Math.sqrt(3);

    private AdjusterFigures() {}

    /** In dB, in the order in which they were begun. */
    static Map<String, Estimate> gains(SessionStory story) {
        double step = story.levels().smallestStep();
        Map<String, Estimate> sums = new LinkedHashMap<>();
        Map<String, Double> again = new LinkedHashMap<>();
        done(story, false).forEach(turn -> {
            boolean first = !sums.containsKey(turn.adjuster());
            sums.merge(turn.adjuster(), turn.limits().gain(turn.gainDb(), step), AdjusterFigures::sum);
            if (!first) {
                again.put(turn.adjuster(), turn.gainDb());
            }
        });
        again.forEach((name, gainDb) ->
                sums.computeIfPresent(name, (same, sum) -> widened(sum, Math.abs(gainDb) / ROOT_3)));
        return sums;
    }

    /** In the unit of the readings, as each was left last. */
    static Map<String, Estimate> zeros(SessionStory story) {
        double step = story.levels().smallestStep();
        Map<String, Estimate> left = new LinkedHashMap<>();
        done(story, true)
                .forEach(turn -> left.put(
                        turn.adjuster(),
                        new Estimate(turn.after(), turn.limits().sigma(step))));
        return left;
    }

    private static Stream<Turn> done(SessionStory story, boolean zero) {
        return story.turns().stream()
                .filter(turn -> turn.ending().equals(Optional.of(Adjuster.Action.DONE)))
                .filter(turn -> turn.inUnit() == zero && Double.isFinite(zero ? turn.after() : turn.gainDb()));
    }

    private static Estimate sum(Estimate one, Estimate other) {
        return widened(new Estimate(one.value() + other.value(), one.sigma()), other.sigma());
    }

    private static Estimate widened(Estimate figure, double bySigma) {
        return new Estimate(figure.value(), Math.hypot(figure.sigma(), bySigma));
    }
}
