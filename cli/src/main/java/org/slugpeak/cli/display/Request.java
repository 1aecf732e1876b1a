package org.slugpeak.cli.display;

import java.util.Optional;
import java.util.Set;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.plan.Topics;
import org.slugpeak.core.session.Advice;

/**
 * What the user is asked to do with his hands now, to be read across the bench before anything else. Immutable; any thread may
 * use it.
 *
 * @param tNanos when it was asked, nanoseconds from the first reading
 * @param topic of the advice that asks
 * @param text one line
 */
record Request(long tNanos, String topic, String text) {

    /** The generator has left its window. */
    private static final String CUT = "cut-generator";

    private static final Set<String> ASKING =
            Set.of("ask", CUT, Topics.SET_UP, Topics.DAMPING, Topics.TURN, Topics.HANDS_OFF);
    private static final Set<String> ANSWERING = Set.of("check-over", "check-dropped", "generator-changed");

    /** Nobody reads a line in less, even if the hand is moving already. */
    private static final long READ_NANOS = 2_000_000_000L;

    private static final long CUT_LASTS_NANOS = 8_000_000_000L;

    static boolean isAsked(Advice advice) {
        return ASKING.contains(advice.topic());
    }

    /** What is asked after an advice, given what was asked before it. */
    static Optional<Request> after(Optional<Request> before, Advice advice) {
        if (ANSWERING.contains(advice.topic())) {
            return Optional.empty();
        }
        if (!isAsked(advice)) {
            return before;
        }
        return Optional.of(new Request(advice.tNanos(), advice.topic(), advice.text()));
    }

    /** Whether it is still to be shown when a reading comes. */
    boolean stands(long nowNanos, Trend trend) {
        long age = nowNanos - tNanos;
        return switch (topic) {
            case CUT -> age < CUT_LASTS_NANOS;
            case Topics.TURN -> age < READ_NANOS || trend == Trend.STEADY;
            default -> true;
        };
    }
}
