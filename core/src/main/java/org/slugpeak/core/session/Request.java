package org.slugpeak.core.session;

import java.util.Optional;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.level.CheckFigures;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.PlanStep;
import org.slugpeak.core.plan.Preparation;
import org.slugpeak.core.scale.ScaleEstimate;

/** What the person is asked to do, and how that is answered. Immutable; any thread may use it. */
public sealed interface Request extends SessionRecord
        permits Request.Asked,
                Request.CutGenerator,
                Request.GeneratorChanged,
                Request.GeneratorUnchanged,
                Request.CheckOver,
                Request.CheckDropped,
                Request.SetUp,
                Request.Undamp,
                Request.Turn,
                Request.HandsOff,
                Request.SetGenerator,
                Request.SetInput,
                Request.GeneratorStands,
                Request.GeneratorFails {

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.request(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.request(this);
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
         * For an Asked.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R asked(Asked it);

        /**
         * For a CutGenerator.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R cutGenerator(CutGenerator it);

        /**
         * For a GeneratorChanged.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R generatorChanged(GeneratorChanged it);

        /**
         * For a GeneratorUnchanged.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R generatorUnchanged(GeneratorUnchanged it);

        /**
         * For a CheckOver.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R checkOver(CheckOver it);

        /**
         * For a CheckDropped.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R checkDropped(CheckDropped it);

        /**
         * For a SetUp.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R setUp(SetUp it);

        /**
         * For an Undamp.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R undamp(Undamp it);

        /**
         * For a Turn.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R turn(Turn it);

        /**
         * For a HandsOff.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R handsOff(HandsOff it);

        /**
         * For a SetGenerator.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R setGenerator(SetGenerator it);

        /**
         * For a SetInput.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R setInput(SetInput it);

        /**
         * For a GeneratorStands.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R generatorStands(GeneratorStands it);

        /**
         * For a GeneratorFails.
         *
         * @param it the record
         * @return what the caller of {@link Request#match(Matcher)} gets
         */
        R generatorFails(GeneratorFails it);
    }

    /**
     * A check asks for a move.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param check which
     * @param move which of its moves, from 0; as many as it has moves: put things back
     * @param skirtHz how far to either side skirts are compared, Hz
     * @param imageDialHz where on the dial the image is looked for, Hz; NaN where nobody has said
     */
    record Asked(long tNanos, CheckKind check, int move, double skirtHz, double imageDialHz) implements Request {

        /**
         * Where skirts are compared as usual, and nobody has said where the image is.
         *
         * @param tNanos when, nanoseconds from the first reading
         * @param check which
         * @param move which of its moves, from 0
         */
        public Asked(long tNanos, CheckKind check, int move) {
            this(tNanos, check, move, CheckFigures.USUAL_SKIRT_HZ, Double.NaN);
        }

        @Override
        public Manner manner() {
            return Manner.ASKS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.asked(this);
        }
    }

    /**
     * The reading leaves its window: less signal is asked for; or more, so that the detector can be measured.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param factor by which the generator's output should be multiplied
     * @param toReading what will then be read, in the unit of the readings; NaN where version 1 of the log has not kept it
     */
    record CutGenerator(long tNanos, double factor, double toReading) implements Request {

        @Override
        public Manner manner() {
            return Manner.ASKS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.cutGenerator(this);
        }
    }

    /**
     * The reading followed the generator; the best goes on.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param changeDb by how much
     */
    record GeneratorChanged(long tNanos, double changeDb) implements Request {

        @Override
        public Manner manner() {
            return Manner.ANSWERS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.generatorChanged(this);
        }
    }

    /**
     * A change of the generator was announced, and the reading did not change.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record GeneratorUnchanged(long tNanos) implements Request {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.generatorUnchanged(this);
        }
    }

    /**
     * A check is over: the work goes on.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record CheckOver(long tNanos) implements Request {

        @Override
        public Manner manner() {
            return Manner.ANSWERS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.checkOver(this);
        }
    }

    /**
     * A check was given up because nothing changed.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param waitedSeconds how long
     */
    record CheckDropped(long tNanos, double waitedSeconds) implements Request {

        @Override
        public Manner manner() {
            return Manner.ANSWERS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.checkDropped(this);
        }
    }

    /**
     * Generator, dial, leads and damping are to be as a step of a plan wants them.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param what what differs from how it stands
     */
    record SetUp(long tNanos, Preparation what) implements Request {

        @Override
        public Manner manner() {
            return Manner.ASKS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.setUp(this);
        }
    }

    /**
     * A damping resistor has to come off.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param damping which
     */
    record Undamp(long tNanos, Damping damping) implements Request {

        @Override
        public Manner manner() {
            return Manner.ASKS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.undamp(this);
        }
    }

    /**
     * An adjuster of a plan is to be turned.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param step which, and for what
     */
    record Turn(long tNanos, PlanStep step) implements Request {

        @Override
        public Manner manner() {
            return Manner.ASKS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.turn(this);
        }
    }

    /**
     * The hand is to be taken away.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param rocking whether the gang was rocked, and that was the greatest sweep
     */
    record HandsOff(long tNanos, boolean rocking) implements Request {

        @Override
        public Manner manner() {
            return Manner.ASKS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.handsOff(this);
        }
    }

    /**
     * The generator is to be set to a frequency of a response curve.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param hz which, Hz
     * @param number which point of the curve it is, from 1
     * @param points how many the curve has
     * @param byHand whether a person is to do it; else the generator is told from here
     * @param mark what its dial has to be set to for that; empty where nobody knows how it errs
     */
    record SetGenerator(long tNanos, double hz, int number, int points, boolean byHand, Optional<ScaleEstimate> mark)
            implements Request {

        @Override
        public Manner manner() {
            return byHand ? Manner.ASKS : Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.setGenerator(this);
        }
    }

    /**
     * The generator is to stand so for a reading of a sheet.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param setting how it is to stand, and what else is to be done
     * @param unasked whether it obeys, and nothing is asked of a person
     * @param mark what its dial has to be set to; empty where nobody has said how it errs
     */
    record SetInput(long tNanos, InputSetting setting, boolean unasked, Optional<ScaleEstimate> mark)
            implements Request {

        @Override
        public Manner manner() {
            return unasked ? Manner.NOTES : Manner.ASKS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.setInput(this);
        }
    }

    /**
     * The generator was set from here, and this is what it reads back.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param hz its frequency, Hz
     * @param emfVolts its level, volts EMF; 0 with its output off; NaN where only a hand sets the level
     */
    record GeneratorStands(long tNanos, double hz, double emfVolts) implements Request {

        @Override
        public Manner manner() {
            return Manner.NOTES;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.generatorStands(this);
        }
    }

    /**
     * The generator that is set from here does not do as it was told, does not say the truth, or has gone.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param gone whether nobody knows how it stands until it is said anew
     * @param detail one line: what was seen and what to do
     */
    record GeneratorFails(long tNanos, boolean gone, String detail) implements Request {

        @Override
        public Manner manner() {
            return Manner.ASKS;
        }

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.generatorFails(this);
        }
    }
}
