package org.slugpeak.cli.words;

import java.util.List;
import org.slugpeak.core.plan.SafetyAnswers;

/** What was answered to the safety questions, and what is still dangerous, in words. All methods are pure. */
public final class SafetyWords {

    private SafetyWords() {}

    /** What must be put right first, one line each. */
    public static List<String> dangers(SafetyAnswers answers) {
        return answers.dangers().stream().map(danger -> danger(danger, answers)).toList();
    }

    private static String danger(SafetyAnswers.Danger danger, SafetyAnswers answers) {
        return switch (danger) {
            case LIVE_CHASSIS -> Phrase.LIVE_CHASSIS.of();
            case EARTHED_LEAD -> Phrase.EARTHED_LEAD.of();
            case OPEN_LEADS ->
                Phrase.OPEN_LEADS.of((answers.mayBeLive() ? Phrase.Y1_CAPACITORS : Phrase.BLOCKING_CAPACITOR).of());
        };
    }

    /** The answers for the record, one line each. */
    public static List<String> lines(SafetyAnswers answers) {
        return List.of(
                Phrase.ANSWER_CHASSIS.of(answers.chassis().code()),
                Phrase.ANSWER_ISOLATED.of(yesNo(answers.isolationTransformer())),
                Phrase.ANSWER_EARTHED.of(yesNo(answers.earthed())),
                Phrase.ANSWER_LEADS.of(yesNo(answers.leadsFitted())));
    }

    private static String yesNo(boolean yes) {
        return (yes ? Phrase.YES : Phrase.NO).of();
    }
}
