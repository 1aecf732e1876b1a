package org.slugpeak.core.session;

import org.slugpeak.core.level.LevelCommand;
import org.slugpeak.core.peak.Seek;

/** What a person, or the plan that leads, orders the analysis to do. Immutable; any thread may use it. */
public sealed interface Instruction {

    /**
     * Calls the one method of the matcher that fits.
     *
     * @param <R> what the matcher gives back
     * @param matcher has a method for every kind of instruction
     * @return what that method gave
     */
    <R> R match(Matcher<R> matcher);

    /**
     * One method for each kind of instruction.
     *
     * @param <R> what the methods give back
     */
    interface Matcher<R> {

        /**
         * For the level watch.
         *
         * @param it the instruction
         * @return what the caller of {@link Instruction#match} gets
         */
        R level(Level it);

        /**
         * For another thing to seek.
         *
         * @param it the instruction
         * @return what the caller of {@link Instruction#match} gets
         */
        R find(Find it);

        /**
         * For a value to take back.
         *
         * @param it the instruction
         * @return what the caller of {@link Instruction#match} gets
         */
        R takeBack(TakeBack it);
    }

    /**
     * To the level watch.
     *
     * @param command what
     */
    record Level(LevelCommand command) implements Instruction {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.level(this);
        }
    }

    /**
     * From here on something else is sought.
     *
     * @param seek what
     */
    record Find(Seek seek) implements Instruction {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.find(this);
        }
    }

    /** The last value of a stepped session is taken back. */
    record TakeBack() implements Instruction {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.takeBack(this);
        }
    }
}
