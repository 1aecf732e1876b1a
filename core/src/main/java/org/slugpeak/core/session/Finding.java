package org.slugpeak.core.session;

import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.steps.StepsBack;

/**
 * What the finder has found: where the maximum is, and which way to go. Immutable; any thread may use it.
 */
public sealed interface Finding extends SessionRecord
        permits Passed, Returned, Held, TwoPeaks, NoPeak, Finding.Hinted, Finding.FurtherPast {

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.finding(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.finding(this);
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
         * For a Passed.
         *
         * @param it the record
         * @return what the caller of {@link Finding#match(Matcher)} gets
         */
        R passed(Passed it);

        /**
         * For a Returned.
         *
         * @param it the record
         * @return what the caller of {@link Finding#match(Matcher)} gets
         */
        R returned(Returned it);

        /**
         * For a Held.
         *
         * @param it the record
         * @return what the caller of {@link Finding#match(Matcher)} gets
         */
        R held(Held it);

        /**
         * For a TwoPeaks.
         *
         * @param it the record
         * @return what the caller of {@link Finding#match(Matcher)} gets
         */
        R twoPeaks(TwoPeaks it);

        /**
         * For a NoPeak.
         *
         * @param it the record
         * @return what the caller of {@link Finding#match(Matcher)} gets
         */
        R noPeak(NoPeak it);

        /**
         * For a Hinted.
         *
         * @param it the record
         * @return what the caller of {@link Finding#match(Matcher)} gets
         */
        R hinted(Hinted it);

        /**
         * For a FurtherPast.
         *
         * @param it the record
         * @return what the caller of {@link Finding#match(Matcher)} gets
         */
        R furtherPast(FurtherPast it);
    }

    /**
     * The finder's advice beside its verdicts.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param hint what
     * @param amount in the unit that {@link Hint} names; NaN where there is none
     */
    record Hinted(long tNanos, Hint hint, double amount) implements Finding {

        @Override
        public Manner manner() {
            return hint == Hint.WRONG_WAY ? Manner.VERDICT : Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.hinted(this);
        }
    }

    /**
     * After a pass among settled values the hand went on, away from what is sought.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param back where it lies, from here
     */
    record FurtherPast(long tNanos, StepsBack back) implements Finding {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.furtherPast(this);
        }
    }
}
