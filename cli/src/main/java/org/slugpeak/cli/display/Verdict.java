package org.slugpeak.cli.display;

import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.cli.words.SeekPhrase;
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

    static Verdict waiting() {
        return new Verdict(Call.WAIT, SeekPhrase.WAITING.of());
    }

    static Verdict turn(Seek seek) {
        return new Verdict(Call.TURN, SeekPhrase.TURN_SLOWLY.of(CodeWords.of(seek.code())));
    }

    /** The word to be read from across the bench. */
    enum Call {
        WAIT(ScreenPhrase.WAIT),
        TURN(ScreenPhrase.TURN),
        OTHER_WAY(ScreenPhrase.OTHER_WAY),
        BACK(ScreenPhrase.BACK),
        STOP(ScreenPhrase.STOP),
        HELD(ScreenPhrase.HELD),
        TWO_PEAKS(ScreenPhrase.TWO_PEAKS),
        NO_PEAK(ScreenPhrase.NO_PEAK),
        END(ScreenPhrase.END);

        private final ScreenPhrase word;

        Call(ScreenPhrase word) {
            this.word = word;
        }

        String word() {
            return word.of();
        }

        /** Whether a better reading than ever makes the verdict out of date. */
        boolean isOverAtNewBest() {
            return this == WAIT || this == OTHER_WAY || this == NO_PEAK;
        }
    }
}
