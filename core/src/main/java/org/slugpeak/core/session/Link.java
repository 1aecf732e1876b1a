package org.slugpeak.core.session;

import org.slugpeak.core.word.Coded;

/**
 * What happens between the instrument and the tool. Immutable; any thread may use it.
 */
public sealed interface Link extends SessionRecord
        permits Link.Changed, Link.Broken, Link.NotAReading, Link.LeftOut, Link.LowBattery, Link.UnitTold, Link.LogGap {

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.link(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.link(this);
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
         * For a Changed.
         *
         * @param it the record
         * @return what the caller of {@link Link#match(Matcher)} gets
         */
        R changed(Changed it);

        /**
         * For a Broken.
         *
         * @param it the record
         * @return what the caller of {@link Link#match(Matcher)} gets
         */
        R broken(Broken it);

        /**
         * For a NotAReading.
         *
         * @param it the record
         * @return what the caller of {@link Link#match(Matcher)} gets
         */
        R notAReading(NotAReading it);

        /**
         * For a LeftOut.
         *
         * @param it the record
         * @return what the caller of {@link Link#match(Matcher)} gets
         */
        R leftOut(LeftOut it);

        /**
         * For a LowBattery.
         *
         * @param it the record
         * @return what the caller of {@link Link#match(Matcher)} gets
         */
        R lowBattery(LowBattery it);

        /**
         * For a UnitTold.
         *
         * @param it the record
         * @return what the caller of {@link Link#match(Matcher)} gets
         */
        R unitTold(UnitTold it);

        /**
         * For a LogGap.
         *
         * @param it the record
         * @return what the caller of {@link Link#match(Matcher)} gets
         */
        R logGap(LogGap it);
    }

    /** What a link can be. */
    public enum State implements Coded {
        /** The instrument has gone; reconnection is being tried. */
        LOST("lost"),
        /** The instrument is there but sends nothing; the last number is old. */
        STALE("stale"),
        /** Readings come again. */
        RESUMED("resumed");

        private final String code;

        State(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /**
     * The link was lost, fell silent, or is there again.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param state what happened
     * @param detail what whoever noticed knows of it
     */
    record Changed(long tNanos, State state, LinkDetail detail) implements Link {

        @Override
        public Manner manner() {
            return state == State.RESUMED ? Manner.NOTES : Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.changed(this);
        }
    }

    /**
     * The instrument broke the run of its readings though the link is sound.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param notice how
     * @param detail what whoever noticed knows of it
     */
    record Broken(long tNanos, LinkNotice notice, LinkDetail detail) implements Link {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.broken(this);
        }
    }

    /**
     * Something came that is no reading.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param where line, port or time
     * @param problem one line: what was wrong with it
     * @param count how many there were by then
     */
    record NotAReading(long tNanos, String where, String problem, long count) implements Link {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.notAReading(this);
        }
    }

    /**
     * How many lines were no readings, where that was not said for each.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param count how many
     */
    record LeftOut(long tNanos, long count) implements Link {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.leftOut(this);
        }
    }

    /**
     * The instrument's battery is low.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record LowBattery(long tNanos) implements Link {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.lowBattery(this);
        }
    }

    /**
     * What readings are counted in was told only after the session had begun.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param unit of the readings
     */
    record UnitTold(long tNanos, String unit) implements Link {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.unitTold(this);
        }
    }

    /**
     * Records are missing here in the log.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param lost how many
     */
    record LogGap(long tNanos, long lost) implements Link {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.logGap(this);
        }
    }
}
