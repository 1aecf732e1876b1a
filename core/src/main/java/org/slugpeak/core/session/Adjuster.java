package org.slugpeak.core.session;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.slugpeak.core.word.Coded;

/**
 * An adjuster is begun, done or skipped. Immutable; any thread may use it.
 *
 * @param tNanos when, nanoseconds from the first reading
 * @param name of the adjuster
 * @param action what happens with it
 * @param before level before, as read, in the unit of the readings; NaN if not known
 * @param after level after, as read, in the unit of the readings; NaN if not known
 * @param gainDb what was gained, dB; NaN if not known
 */
public record Adjuster(long tNanos, String name, Action action, double before, double after, double gainDb)
        implements Work {

    /**
     * What was set.
     *
     * @param log records of a session
     * @return the names of all adjusters that are done in it
     */
    public static Set<String> done(List<? extends SessionRecord> log) {
        return log.stream()
                .filter(Adjuster.class::isInstance)
                .map(Adjuster.class::cast)
                .filter(it -> it.action() == Action.DONE)
                .map(Adjuster::name)
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * The same with another gain.
     *
     * @param knownDb what was gained, dB
     * @return a copy
     */
    Adjuster gaining(double knownDb) {
        return new Adjuster(tNanos, name, action, before, after, knownDb);
    }

    @Override
    public Manner manner() {
        return Manner.NOTES;
    }

    @Override
    public <R> R match(Matcher<R> matcher) {
        return matcher.adjuster(this);
    }

    /** What happens with an adjuster. */
    public enum Action implements Coded {
        /** Work on it starts; the best is forgotten. */
        BEGIN("begin"),
        /** It is set. */
        DONE("done"),
        /** It is left as it is. */
        SKIP("skip");

        private final String code;

        Action(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }
}
