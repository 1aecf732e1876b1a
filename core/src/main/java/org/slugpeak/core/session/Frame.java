package org.slugpeak.core.session;

/**
 * What frames a session and what it is made of: its opening, each reading, its end. Immutable; any thread may use it.
 */
public sealed interface Frame extends SessionRecord permits SessionStart, ReadingTaken, SessionEnd {

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.frame(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.frame(this);
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
         * For a SessionStart.
         *
         * @param it the record
         * @return what the caller of {@link Frame#match(Matcher)} gets
         */
        R sessionStart(SessionStart it);

        /**
         * For a ReadingTaken.
         *
         * @param it the record
         * @return what the caller of {@link Frame#match(Matcher)} gets
         */
        R readingTaken(ReadingTaken it);

        /**
         * For a SessionEnd.
         *
         * @param it the record
         * @return what the caller of {@link Frame#match(Matcher)} gets
         */
        R sessionEnd(SessionEnd it);
    }
}
