package org.slugpeak.core.session;

import org.slugpeak.core.word.Coded;

/** Why a session ended. Immutable; any thread may use it. */
public sealed interface EndReason {

    /**
     * How records spell it, in every language alike.
     *
     * @return one word or line
     */
    String code();

    /**
     * The reason with a given code.
     *
     * @param code as written in records
     * @return one of the {@link Known}; where none is spelled so, what stands there
     */
    static EndReason ofCode(String code) {
        return Coded.find(Known.class, code).<EndReason>map(it -> it).orElseGet(() -> new Recorded(code));
    }

    /** Those that this program gives. */
    enum Known implements EndReason, Coded {
        /** What was to be kept is kept. */
        DONE("done"),
        /** The user ended it. */
        QUIT("quit"),
        /** The process was told to stop. */
        INTERRUPTED("interrupted"),
        /** The terminal went away. */
        TERMINAL_CLOSED("terminal closed"),
        /** The source failed for good. */
        FAILED("failed"),
        /** The file, or the simulation, has ended. */
        SOURCE_ENDED("source ended"),
        /** Every step of the plan is behind. */
        PLAN_THROUGH("plan through"),
        /** Every point of the curve is taken. */
        CURVE_COMPLETE("curve complete"),
        /** Every figure of the sheet was seen to. */
        SHEET_COMPLETE("sheet complete"),
        /** The generator that is stepped does not obey. */
        GENERATOR_ASTRAY("the generator does not follow"),
        /** The recording was never closed. */
        BROKEN_OFF("broken off: the log has no end record");

        private final String code;

        Known(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /**
     * What a log of another version, or of another program, gives.
     *
     * @param code as it stands there
     */
    record Recorded(String code) implements EndReason {}
}
