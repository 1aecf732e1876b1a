package org.slugpeak.core.session;

/**
 * What the person says. Immutable; any thread may use it.
 */
public sealed interface Said extends SessionRecord permits Said.Note, Said.Command, Said.Answer, Said.Counted {

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.said(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.said(this);
    }

    /**
     * Calls the one method of the matcher that fits.
     *
     * @param <R> what the matcher gives back
     * @param matcher has a method for every kind of this family
     * @return what that method gave
     */
    <R> R match(Matcher<R> matcher);

    /**
     * One method for each kind of this family, so that none can be forgotten.
     *
     * @param <R> what the methods give back
     */
    interface Matcher<R> {

        /**
         * For a Note.
         *
         * @param it the record
         * @return what the caller of {@link Said#match(Matcher)} gets
         */
        R note(Note it);

        /**
         * For a Command.
         *
         * @param it the record
         * @return what the caller of {@link Said#match(Matcher)} gets
         */
        R command(Command it);

        /**
         * For an Answer.
         *
         * @param it the record
         * @return what the caller of {@link Said#match(Matcher)} gets
         */
        R answer(Answer it);

        /**
         * For a Counted.
         *
         * @param it the record
         * @return what the caller of {@link Said#match(Matcher)} gets
         */
        R counted(Counted it);
    }

    /**
     * A note, whatever it reads.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param text one line, in the person's own words
     */
    record Note(long tNanos, String text) implements Said {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.note(this);
        }
    }

    /**
     * An order to the analysis, which a replay obeys again.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param instruction what
     */
    record Command(long tNanos, Instruction instruction) implements Said {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.command(this);
        }
    }

    /**
     * What was answered to a safety question, or told of it.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param text one line for the record
     */
    record Answer(long tNanos, String text) implements Said {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.answer(this);
        }
    }

    /**
     * What a counter at the generator shows, as it was typed.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param hz what was typed, Hz
     * @param wantedHz what the step or point wants, Hz
     * @param taken whether a point of a response curve is taken there; else the generator is to be set to what is wanted
     */
    record Counted(long tNanos, double hz, double wantedHz, boolean taken) implements Said {

        @Override
        public Manner manner() {
            return Manner.ANSWERS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.counted(this);
        }
    }
}
