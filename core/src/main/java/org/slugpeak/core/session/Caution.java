package org.slugpeak.core.session;

import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.level.Suspicion;

/**
 * What is to be known of the signal before a maximum is believed. Immutable; any thread may use it.
 */
public sealed interface Caution extends SessionRecord
        permits Overload,
                OverloadCleared,
                Weak,
                Drift,
                Caution.Settled,
                Caution.Suspected,
                Caution.NoLongerSuspected,
                Caution.WidePeak,
                Caution.RestMissing,
                Caution.SlowReadings,
                Caution.WindowMissed,
                Caution.Checked {

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.caution(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.caution(this);
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
         * For an Overload.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R overload(Overload it);

        /**
         * For an OverloadCleared.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R overloadCleared(OverloadCleared it);

        /**
         * For a Weak.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R weak(Weak it);

        /**
         * For a Drift.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R drift(Drift it);

        /**
         * For a Settled.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R settled(Settled it);

        /**
         * For a Suspected.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R suspected(Suspected it);

        /**
         * For a NoLongerSuspected.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R noLongerSuspected(NoLongerSuspected it);

        /**
         * For a WidePeak.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R widePeak(WidePeak it);

        /**
         * For a RestMissing.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R restMissing(RestMissing it);

        /**
         * For a SlowReadings.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R slowReadings(SlowReadings it);

        /**
         * For a WindowMissed.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R windowMissed(WindowMissed it);

        /**
         * For a Checked.
         *
         * @param it the record
         * @return what the caller of {@link Caution#match(Matcher)} gets
         */
        R checked(Checked it);
    }

    /**
     * The reading that drifted has settled.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param dbPerMinute what is left of the drift, dB a minute
     */
    record Settled(long tNanos, double dbPerMinute) implements Caution {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.settled(this);
        }
    }

    /**
     * Something in set or bench may be wrong.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param suspicion what
     * @param amount the figure that gave it away, in the unit of its check; NaN where there is none
     */
    record Suspected(long tNanos, Suspicion suspicion, double amount) implements Caution {

        @Override
        public Manner manner() {
            return Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.suspected(this);
        }
    }

    /**
     * A check has shown that it is not, or no longer, so.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param suspicion what had been suspected
     */
    record NoLongerSuspected(long tNanos, Suspicion suspicion) implements Caution {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.noLongerSuspected(this);
        }
    }

    /**
     * This peak was much wider than the earlier ones.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param times how many times as wide
     */
    record WidePeak(long tNanos, double times) implements Caution {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.widePeak(this);
        }
    }

    /**
     * Decibels are doubtful because no resting reading was taken.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record RestMissing(long tNanos) implements Caution {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.restMissing(this);
        }
    }

    /**
     * Readings come too slowly to follow a turning hand.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param intervalSeconds from one to the next
     */
    record SlowReadings(long tNanos, double intervalSeconds) implements Caution {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.slowReadings(this);
        }
    }

    /**
     * A generator that obeys does not bring the reading into the window of the step; the work goes on with what there is.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param missedDb the reading against the nearer end of the window, dB: negative below it, positive above
     */
    record WindowMissed(long tNanos, double missedDb) implements Caution {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.windowMissed(this);
        }
    }

    /**
     * A check of the trade has its result.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param check which
     * @param figures what came of it
     */
    record Checked(long tNanos, CheckKind check, CheckFigures figures) implements Caution {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.checked(this);
        }
    }
}
