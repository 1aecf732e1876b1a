package org.slugpeak.cli.words;

import org.slugpeak.core.session.EndReason;

/** Why a session ended, for a person; a log spells it always alike. All methods are pure. */
public final class EndWords {

    private EndWords() {}

    /**
     * Why a session ended, in today's language.
     *
     * @param reason of the end
     * @return one word or line; what stands in the log where this program does not know it
     */
    public static String of(EndReason reason) {
        return reason instanceof EndReason.Known known ? known(known) : reason.code();
    }

    private static String known(EndReason.Known reason) {
        return switch (reason) {
            case DONE -> EndPhrase.DONE.of();
            case QUIT -> EndPhrase.QUIT.of();
            case INTERRUPTED -> EndPhrase.INTERRUPTED.of();
            case TERMINAL_CLOSED -> EndPhrase.TERMINAL_CLOSED.of();
            case FAILED -> EndPhrase.FAILED.of();
            case SOURCE_ENDED -> EndPhrase.SOURCE_ENDED.of();
            case PLAN_THROUGH -> EndPhrase.PLAN_THROUGH.of();
            case CURVE_COMPLETE -> EndPhrase.CURVE_COMPLETE.of();
            case SHEET_COMPLETE -> EndPhrase.SHEET_COMPLETE.of();
            case GENERATOR_ASTRAY -> EndPhrase.GENERATOR_ASTRAY.of();
            case BROKEN_OFF -> EndPhrase.BROKEN_OFF.of();
        };
    }
}
