package org.slugpeak.core.session;

/**
 * What a person must judge while a plan is carried out. Immutable; any thread may use it.
 */
public sealed interface Guard extends SessionRecord
        permits Guard.StillShort,
                Guard.BegunAgain,
                Guard.TwoMaxima,
                Guard.Choice,
                Guard.EndOfTravel,
                Guard.LateGain,
                Guard.ClampGainControl {

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.guard(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.guard(this);
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
         * For a StillShort.
         *
         * @param it the record
         * @return what the caller of {@link Guard#match(Matcher)} gets
         */
        R stillShort(StillShort it);

        /**
         * For a BegunAgain.
         *
         * @param it the record
         * @return what the caller of {@link Guard#match(Matcher)} gets
         */
        R begunAgain(BegunAgain it);

        /**
         * For a TwoMaxima.
         *
         * @param it the record
         * @return what the caller of {@link Guard#match(Matcher)} gets
         */
        R twoMaxima(TwoMaxima it);

        /**
         * For a Choice.
         *
         * @param it the record
         * @return what the caller of {@link Guard#match(Matcher)} gets
         */
        R choice(Choice it);

        /**
         * For an EndOfTravel.
         *
         * @param it the record
         * @return what the caller of {@link Guard#match(Matcher)} gets
         */
        R endOfTravel(EndOfTravel it);

        /**
         * For a LateGain.
         *
         * @param it the record
         * @return what the caller of {@link Guard#match(Matcher)} gets
         */
        R lateGain(LateGain it);

        /**
         * For a ClampGainControl.
         *
         * @param it the record
         * @return what the caller of {@link Guard#match(Matcher)} gets
         */
        R clampGainControl(ClampGainControl it);
    }

    /**
     * Nothing moves any more, and the adjuster is not at its best.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param missingDb what is missing to the best, dB; NaN if not known
     */
    record StillShort(long tNanos, double missingDb) implements Guard {

        @Override
        public Manner manner() {
            return Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.stillShort(this);
        }
    }

    /**
     * A best that nobody came back to is forgotten: the adjuster is begun again.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record BegunAgain(long tNanos) implements Guard {

        @Override
        public Manner manner() {
            return Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.begunAgain(this);
        }
    }

    /**
     * Two maxima in one travel: a person must judge which is right.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param dipDb depth of the dip between them, dB
     */
    record TwoMaxima(long tNanos, double dipDb) implements Guard {

        @Override
        public Manner manner() {
            return Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.twoMaxima(this);
        }
    }

    /**
     * One of two maxima is held: staying chooses it.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record Choice(long tNanos) implements Guard {

        @Override
        public Manner manner() {
            return Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.choice(this);
        }
    }

    /**
     * The best is at the end of the travel.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record EndOfTravel(long tNanos) implements Guard {

        @Override
        public Manner manner() {
            return Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.endOfTravel(this);
        }
    }

    /**
     * An adjuster gained where nothing should have been left to gain.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param adjuster its name
     * @param round in which round, from 1
     * @param gainDb how much, dB
     */
    record LateGain(long tNanos, String adjuster, int round, double gainDb) implements Guard {

        @Override
        public Manner manner() {
            return Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.lateGain(this);
        }
    }

    /**
     * The reading does not follow the generator although the signal was made smaller: gain control is to be held at a fixed voltage.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record ClampGainControl(long tNanos) implements Guard {

        @Override
        public Manner manner() {
            return Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.clampGainControl(this);
        }
    }
}
