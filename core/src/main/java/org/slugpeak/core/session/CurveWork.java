package org.slugpeak.core.session;

/**
 * What comes of a response curve, point by point, and of the steps that show the detector's law. Immutable; any thread may use it.
 */
public sealed interface CurveWork extends SessionRecord
        permits CurveWork.PointTaken, CurveWork.PointLeftOut, CurveWork.LawStep, CurveWork.CurveOver {

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.curveWork(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.curveWork(this);
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
     * The same at another time, for whoever plays a session again.
     *
     * @param tNanos nanoseconds from the first reading
     * @return all else as it is here
     */
    CurveWork at(long tNanos);

    /**
     * One method for each kind of this family, so that none can be forgotten.
     *
     * @param <R> what the methods give back
     */
    interface Matcher<R> {

        /**
         * For a PointTaken.
         *
         * @param it the record
         * @return what the caller of {@link CurveWork#match(Matcher)} gets
         */
        R pointTaken(PointTaken it);

        /**
         * For a PointLeftOut.
         *
         * @param it the record
         * @return what the caller of {@link CurveWork#match(Matcher)} gets
         */
        R pointLeftOut(PointLeftOut it);

        /**
         * For a LawStep.
         *
         * @param it the record
         * @return what the caller of {@link CurveWork#match(Matcher)} gets
         */
        R lawStep(LawStep it);

        /**
         * For a CurveOver.
         *
         * @param it the record
         * @return what the caller of {@link CurveWork#match(Matcher)} gets
         */
        R curveOver(CurveOver it);
    }

    /**
     * A point of a response curve.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param hz generator frequency, Hz
     * @param level above rest, in the unit
     */
    record PointTaken(long tNanos, double hz, double level) implements CurveWork {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.pointTaken(this);
        }

        @Override
        public CurveWork at(long tNanos) {
            return new PointTaken(tNanos, hz, level);
        }
    }

    /**
     * A point of a response curve at which no reading could be trusted.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param hz generator frequency, Hz
     */
    record PointLeftOut(long tNanos, double hz) implements CurveWork {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.pointLeftOut(this);
        }

        @Override
        public CurveWork at(long tNanos) {
            return new PointLeftOut(tNanos, hz);
        }
    }

    /**
     * What the detector makes of a known step of the generator.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param generatorDb against the first step
     * @param level above rest, in the unit
     */
    record LawStep(long tNanos, double generatorDb, double level) implements CurveWork {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.lawStep(this);
        }

        @Override
        public CurveWork at(long tNanos) {
            return new LawStep(tNanos, generatorDb, level);
        }
    }

    /**
     * Every point of a response curve was seen to.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record CurveOver(long tNanos) implements CurveWork {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.curveOver(this);
        }

        @Override
        public CurveWork at(long tNanos) {
            return new CurveOver(tNanos);
        }
    }
}
