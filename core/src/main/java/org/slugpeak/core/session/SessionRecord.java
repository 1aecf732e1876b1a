package org.slugpeak.core.session;

/**
 * One record of a session: the vocabulary that log, JSON stream, display, sound cues, replay and report share. All records
 * are immutable values that any thread may use.
 */
public sealed interface SessionRecord
        permits SessionStart,
                Passed,
                Returned,
                Held,
                TwoPeaks,
                NoPeak,
                Overload,
                OverloadCleared,
                Weak,
                Drift,
                Link,
                Mark,
                Adjuster,
                Advice,
                ReadingTaken,
                SessionEnd {

    /**
     * When it happened.
     *
     * @return nanoseconds from the first reading, on the readings' own clock
     */
    long tNanos();

    /**
     * Calls the one method of the matcher that fits this record.
     *
     * @param <R> what the matcher gives back
     * @param matcher has a method for every kind of record
     * @return what that method gave
     */
    <R> R match(Matcher<R> matcher);

    /**
     * One method for each kind of record, so that none can be forgotten.
     *
     * @param <R> what the methods give back
     */
    interface Matcher<R> {

        /**
         * For a SessionStart.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R sessionStart(SessionStart it);

        /**
         * For a Passed.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R passed(Passed it);

        /**
         * For a Returned.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R returned(Returned it);

        /**
         * For a Held.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R held(Held it);

        /**
         * For a TwoPeaks.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R twoPeaks(TwoPeaks it);

        /**
         * For a NoPeak.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R noPeak(NoPeak it);

        /**
         * For a Overload.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R overload(Overload it);

        /**
         * For a OverloadCleared.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R overloadCleared(OverloadCleared it);

        /**
         * For a Weak.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R weak(Weak it);

        /**
         * For a Drift.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R drift(Drift it);

        /**
         * For a Link.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R link(Link it);

        /**
         * For a Mark.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R mark(Mark it);

        /**
         * For a Adjuster.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R adjuster(Adjuster it);

        /**
         * For a Advice.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R advice(Advice it);

        /**
         * For a ReadingTaken.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R readingTaken(ReadingTaken it);

        /**
         * For a SessionEnd.
         *
         * @param it the record
         * @return what the caller of {@link SessionRecord#match} gets
         */
        R sessionEnd(SessionEnd it);
    }
}
