package org.slugpeak.core.session;

/** What is known of why a link changed, or the run of readings broke. Immutable; any thread may use it. */
public sealed interface LinkDetail {

    /** Nothing is. */
    LinkDetail NONE = new Told("");

    /**
     * Calls the one method of the matcher that fits.
     *
     * @param <R> what the matcher gives back
     * @param matcher has a method for every kind
     * @return what that method gave
     */
    <R> R match(Matcher<R> matcher);

    /**
     * One method for each kind.
     *
     * @param <R> what the methods give back
     */
    interface Matcher<R> {

        /**
         * For words of another.
         *
         * @param it the detail
         * @return what the caller of {@link LinkDetail#match(Matcher)} gets
         */
        R told(Told it);

        /**
         * For what has no figure.
         *
         * @param it the detail
         * @return what the caller of {@link LinkDetail#match(Matcher)} gets
         */
        R cause(Cause it);

        /**
         * For readings that have ceased.
         *
         * @param it the detail
         * @return what the caller of {@link LinkDetail#match(Matcher)} gets
         */
        R silent(Silent it);

        /**
         * For readings that do not begin.
         *
         * @param it the detail
         * @return what the caller of {@link LinkDetail#match(Matcher)} gets
         */
        R nothingYet(NothingYet it);

        /**
         * For the end of a silence.
         *
         * @param it the detail
         * @return what the caller of {@link LinkDetail#match(Matcher)} gets
         */
        R after(After it);

        /**
         * For a board that tells its start line again.
         *
         * @param it the detail
         * @return what the caller of {@link LinkDetail#match(Matcher)} gets
         */
        R board(Board it);

        /**
         * For a column of times that starts again.
         *
         * @param it the detail
         * @return what the caller of {@link LinkDetail#match(Matcher)} gets
         */
        R timesAgain(TimesAgain it);
    }

    /**
     * In words that came from outside: of a log, of the system, of an error.
     *
     * @param text one line; may be empty
     */
    record Told(String text) implements LinkDetail {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.told(this);
        }
    }

    /** What has no figure. */
    enum Cause implements LinkDetail {
        /** The plug was pulled, or the instrument switched off. */
        PULLED,
        /** The sound input is gone. */
        SOUND_GONE,
        /** The sound input is there and gives no samples. */
        SOUND_SILENT,
        /** A meter that obeys has changed its range: the user can have it fixed. */
        RANGE_TO_BE_ASKED_FOR,
        /** A meter that only sends has changed its range: it is fixed at the meter. */
        RANGE_TO_BE_SET,
        /** The instrument's own clock has begun again. */
        CLOCK_AGAIN,
        /** The instrument could not send all its readings. */
        NOT_ALL_SENT;

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.cause(this);
        }
    }

    /**
     * No reading has come for a while.
     *
     * @param seconds since the last
     */
    record Silent(double seconds) implements LinkDetail {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.silent(this);
        }
    }

    /**
     * No reading has come at all.
     *
     * @param seconds since the first might have
     * @param sender who should send
     */
    record NothingYet(double seconds, Sender sender) implements LinkDetail {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.nothingYet(this);
        }
    }

    /** Who should send. */
    enum Sender {
        /** A meter. */
        METER,
        /** Another program, through a pipe. */
        PROGRAM
    }

    /**
     * Readings come again.
     *
     * @param seconds that none had come
     */
    record After(double seconds) implements LinkDetail {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.after(this);
        }
    }

    /**
     * A board has told its start line again.
     *
     * @param name of the board, as the line says
     * @param restarted whether it was reset; else it was set to another range
     */
    record Board(String name, boolean restarted) implements LinkDetail {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.board(this);
        }
    }

    /**
     * The column of times of a text starts again.
     *
     * @param line where it does, counted from 1
     */
    record TimesAgain(long line) implements LinkDetail {

        @Override
        public <R> R match(Matcher<R> matcher) {
            return matcher.timesAgain(this);
        }
    }
}
