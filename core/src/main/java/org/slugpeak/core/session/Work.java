package org.slugpeak.core.session;

import org.slugpeak.core.plan.RoundVerdict;

/**
 * The course of the work: adjusters, rounds, points that were taken. Immutable; any thread may use it.
 */
public sealed interface Work extends SessionRecord
        permits Adjuster,
                Work.PlanBegun,
                Work.PathBegun,
                Work.HandEffect,
                Work.Swept,
                Work.RoundEnded,
                Work.WentBack,
                Work.PlanOver,
                Work.DialNoted,
                Work.NothingToTakeBack {

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.work(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.work(this);
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
         * For an Adjuster.
         *
         * @param it the record
         * @return what the caller of {@link Work#match(Matcher)} gets
         */
        R adjuster(Adjuster it);

        /**
         * For a PlanBegun.
         *
         * @param it the record
         * @return what the caller of {@link Work#match(Matcher)} gets
         */
        R planBegun(PlanBegun it);

        /**
         * For a PathBegun.
         *
         * @param it the record
         * @return what the caller of {@link Work#match(Matcher)} gets
         */
        R pathBegun(PathBegun it);

        /**
         * For a HandEffect.
         *
         * @param it the record
         * @return what the caller of {@link Work#match(Matcher)} gets
         */
        R handEffect(HandEffect it);

        /**
         * For a Swept.
         *
         * @param it the record
         * @return what the caller of {@link Work#match(Matcher)} gets
         */
        R swept(Swept it);

        /**
         * For a RoundEnded.
         *
         * @param it the record
         * @return what the caller of {@link Work#match(Matcher)} gets
         */
        R roundEnded(RoundEnded it);

        /**
         * For a WentBack.
         *
         * @param it the record
         * @return what the caller of {@link Work#match(Matcher)} gets
         */
        R wentBack(WentBack it);

        /**
         * For a PlanOver.
         *
         * @param it the record
         * @return what the caller of {@link Work#match(Matcher)} gets
         */
        R planOver(PlanOver it);

        /**
         * For a DialNoted.
         *
         * @param it the record
         * @return what the caller of {@link Work#match(Matcher)} gets
         */
        R dialNoted(DialNoted it);

        /**
         * For a NothingToTakeBack.
         *
         * @param it the record
         * @return what the caller of {@link Work#match(Matcher)} gets
         */
        R nothingToTakeBack(NothingToTakeBack it);
    }

    /**
     * A plan is carried out.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param name of the plan
     */
    record PlanBegun(long tNanos, String name) implements Work {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.planBegun(this);
        }
    }

    /**
     * The signal goes another way from generator to meter than before: gains add up only along one path.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param path its name; the same where the work comes back to it
     */
    record PathBegun(long tNanos, String path) implements Work {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.pathBegun(this);
        }
    }

    /**
     * The reading changed when the hand left.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param changeDb by how much, dB
     */
    record HandEffect(long tNanos, double changeDb) implements Work {

        @Override
        public Manner manner() {
            return Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.handEffect(this);
        }
    }

    /**
     * A sweep of the gang is over.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param belowBestDb against the best sweep, dB, not positive
     */
    record Swept(long tNanos, double belowBestDb) implements Work {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.swept(this);
        }
    }

    /**
     * A round of a stage is over.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param stage its name
     * @param round which round, from 1
     * @param gainDb what it gained, dB; NaN where that does not add up to one figure
     * @param verdict what that means
     */
    record RoundEnded(long tNanos, String stage, int round, double gainDb, RoundVerdict verdict) implements Work {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.roundEnded(this);
        }
    }

    /**
     * The user went back one step of the plan.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record WentBack(long tNanos) implements Work {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.wentBack(this);
        }
    }

    /**
     * The plan is through.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record PlanOver(long tNanos) implements Work {

        @Override
        public Manner manner() {
            return Manner.ALARM;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.planOver(this);
        }
    }

    /**
     * A dial error was measured.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param signalHz true frequency, Hz
     * @param errorHz dial less true, Hz
     * @param after whether it was taken after the work
     */
    record DialNoted(long tNanos, double signalHz, double errorHz, boolean after) implements Work {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.dialNoted(this);
        }
    }

    /**
     * The last value was to be taken back, and there is none.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record NothingToTakeBack(long tNanos) implements Work {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.nothingToTakeBack(this);
        }
    }
}
