package org.slugpeak.cli.display;

import org.slugpeak.core.peak.Seek;

/**
 * What the user is to do.
 *
 * @param call what to do
 * @param sentence why, as it was said when it was decided
 * @param counted whether the sentence counts steps back, which no later reading but one further away brings up to date
 */
record Verdict(Call call, String sentence, boolean counted) {

    Verdict(Call call, String sentence) {
        this(call, sentence, false);
    }

    static Verdict stepsBack(String sentence) {
        return new Verdict(Call.BACK, sentence, true);
    }

    static final Verdict WAITING = new Verdict(Call.WAIT, "waiting for the first reading");

    static Verdict turn(Seek seek) {
        return new Verdict(Call.TURN, "turn slowly, looking for the " + seek.code());
    }

    /** The word to be read from across the bench. */
    enum Call {
        WAIT("WAIT"),
        TURN("TURN"),
        OTHER_WAY("OTHER WAY"),
        BACK("BACK"),
        STOP("STOP"),
        HELD("HELD"),
        TWO_PEAKS("2 PEAKS"),
        NO_PEAK("NO PEAK"),
        END("END");

        private final String word;

        Call(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }

        /** Whether a better reading than ever makes the verdict out of date. */
        boolean isOverAtNewBest() {
            return this == WAIT || this == OTHER_WAY || this == NO_PEAK;
        }
    }
}
