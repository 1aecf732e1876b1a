package org.slugpeak.core.progress;

import java.util.OptionalDouble;
import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.plan.Setup;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Untimed;

/** What the session that carries a plan out has to do next. Immutable; any thread may use it. */
public sealed interface Order {

    /**
     * Calls the one method of the matcher that fits.
     *
     * @param matcher has a method for every kind of order
     */
    void match(Matcher matcher);

    /** One method for each kind of order. */
    interface Matcher {
        /**
         * For a begin.
         *
         * @param it the order
         */
        void begin(Begin it);

        /**
         * For an end.
         *
         * @param it the order
         */
        void end(End it);

        /**
         * For a say.
         *
         * @param it the order
         */
        void say(Say it);

        /**
         * For a command to the level watch.
         *
         * @param it the order
         */
        void level(Level it);

        /**
         * For a feed; ordered only where a generator is set from here, so that others need not take it.
         *
         * @param it the order
         */
        default void feed(Feed it) {}

        /**
         * For a finish.
         *
         * @param it the order
         */
        void finish(Finish it);
    }

    /**
     * Begin an adjuster.
     *
     * @param adjuster its name
     * @param seek what the finder looks for
     */
    record Begin(String adjuster, Seek seek) implements Order {
        @Override
        public void match(Matcher matcher) {
            matcher.begin(this);
        }
    }

    /**
     * Record that the adjuster is done or left.
     *
     * @param action done or skip
     * @param gainDb what was gained, dB, where the readings before and after do not tell: in sweeps
     */
    record End(Adjuster.Action action, OptionalDouble gainDb) implements Order {
        @Override
        public void match(Matcher matcher) {
            matcher.end(this);
        }
    }

    /**
     * Tell the user, and keep it in the record.
     *
     * @param what gets its time from the session
     */
    record Say(Untimed what) implements Order {
        @Override
        public void match(Matcher matcher) {
            matcher.say(this);
        }
    }

    /**
     * Tell the level watch: begin a check, it is done, drop it.
     *
     * @param command what
     */
    record Level(LevelCommand command) implements Order {
        @Override
        public void match(Matcher matcher) {
            matcher.level(this);
        }
    }

    /**
     * Set the generator as a step wants it.
     *
     * @param setup of the step
     */
    record Feed(Setup setup) implements Order {
        @Override
        public void match(Matcher matcher) {
            matcher.feed(this);
        }
    }

    /** The plan is through. */
    record Finish() implements Order {
        @Override
        public void match(Matcher matcher) {
            matcher.finish(this);
        }
    }
}
