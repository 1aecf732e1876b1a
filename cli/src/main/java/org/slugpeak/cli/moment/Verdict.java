package org.slugpeak.cli.moment;

import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.SeekPhrase;
import org.slugpeak.core.peak.Seek;

/**
 * What the finder wants of the hand. Immutable; any thread may use it.
 *
 * @param act what to do
 * @param sentence why, as it was said when it was decided
 * @param counted whether the sentence counts steps back, which no later reading but one further away brings up to date
 */
public record Verdict(Act act, String sentence, boolean counted) {

    Verdict(Act act, String sentence) {
        this(act, sentence, false);
    }

    static Verdict stepsBack(String sentence) {
        return new Verdict(Act.BACK, sentence, true);
    }

    static Verdict waiting() {
        return new Verdict(Act.WAIT, SeekPhrase.WAITING.of());
    }

    static Verdict turn(Seek seek) {
        return new Verdict(Act.TURN, SeekPhrase.TURN_SLOWLY.of(CodeWords.of(seek.code())));
    }
}
