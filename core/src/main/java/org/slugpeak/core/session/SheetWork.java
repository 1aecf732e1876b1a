package org.slugpeak.core.session;

import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.OutputReading;

/** What comes of a receiver's sheet: what it was measured under, each reading, each figure. Immutable; any thread may use it. */
public sealed interface SheetWork extends SessionRecord
        permits SheetWork.Begun, SheetWork.OutputTaken, SheetWork.FigureTaken, SheetWork.SheetOver {

    @Override
    default Manner manner() {
        return Manner.NOTES;
    }

    @Override
    default <R> R matchFamily(Families<R> families) {
        return families.sheetWork(this);
    }

    @Override
    default void tellFamily(FamilyListener listener) {
        listener.sheetWork(this);
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
    SheetWork at(long tNanos);

    /**
     * One method for each kind of this family, so that none can be forgotten.
     *
     * @param <R> what the methods give back
     */
    interface Matcher<R> {

        /**
         * For a Begun.
         *
         * @param it the record
         * @return what the caller of {@link SheetWork#match(Matcher)} gets
         */
        R begun(Begun it);

        /**
         * For an OutputTaken.
         *
         * @param it the record
         * @return what the caller of {@link SheetWork#match(Matcher)} gets
         */
        R outputTaken(OutputTaken it);

        /**
         * For a FigureTaken.
         *
         * @param it the record
         * @return what the caller of {@link SheetWork#match(Matcher)} gets
         */
        R figureTaken(FigureTaken it);

        /**
         * For a SheetOver.
         *
         * @param it the record
         * @return what the caller of {@link SheetWork#match(Matcher)} gets
         */
        R sheetOver(SheetOver it);
    }

    /**
     * A sheet is begun.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param conditions what it is measured under
     */
    record Begun(long tNanos, Conditions conditions) implements SheetWork {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.begun(this);
        }

        @Override
        public SheetWork at(long tNanos) {
            return new Begun(tNanos, conditions);
        }
    }

    /**
     * The output was read at a setting of the generator.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param kind the first figure that it is for
     * @param setting how the generator stood
     * @param output what was read
     */
    record OutputTaken(long tNanos, FigureKind kind, InputSetting setting, OutputReading output) implements SheetWork {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.outputTaken(this);
        }

        @Override
        public SheetWork at(long tNanos) {
            return new OutputTaken(tNanos, kind, setting, output);
        }
    }

    /**
     * A figure is known, or was left out.
     *
     * @param tNanos when, nanoseconds from the first reading
     * @param figure which, and what it is
     */
    record FigureTaken(long tNanos, Figure figure) implements SheetWork {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.figureTaken(this);
        }

        @Override
        public SheetWork at(long tNanos) {
            return new FigureTaken(tNanos, figure);
        }
    }

    /**
     * Every figure of the sheet was seen to.
     *
     * @param tNanos when, nanoseconds from the first reading
     */
    record SheetOver(long tNanos) implements SheetWork {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.sheetOver(this);
        }

        @Override
        public SheetWork at(long tNanos) {
            return new SheetOver(tNanos);
        }
    }
}
