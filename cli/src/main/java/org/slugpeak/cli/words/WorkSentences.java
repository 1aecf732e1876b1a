package org.slugpeak.cli.words;

import org.slugpeak.core.plan.RoundVerdict;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Work;

/** The course of the work. Immutable. */
final class WorkSentences implements Work.Matcher<String> {

    @Override
    public String adjuster(Adjuster it) {
        return "";
    }

    @Override
    public String planBegun(Work.PlanBegun it) {
        return it.name();
    }

    @Override
    public String pathBegun(Work.PathBegun it) {
        return "";
    }

    @Override
    public String handEffect(Work.HandEffect it) {
        return Phrase.HAND_EFFECT.of(it.changeDb());
    }

    @Override
    public String swept(Work.Swept it) {
        return Phrase.SWEPT.of(Rounded.to(it.belowBestDb(), 1));
    }

    @Override
    public String roundEnded(Work.RoundEnded it) {
        String verdict = verdict(it.verdict());
        return Double.isNaN(it.gainDb())
                ? Phrase.ROUND_OVER.of(it.stage(), it.round(), verdict)
                : Phrase.ROUND_ENDED.of(it.stage(), it.round(), Rounded.to(it.gainDb(), 2), verdict);
    }

    private static String verdict(RoundVerdict verdict) {
        return switch (verdict) {
            case CONVERGED -> Phrase.CONVERGED.of();
            case AGAIN -> Phrase.AGAIN.of();
            case CREEPING -> Phrase.CREEPING.of(SafeHands.safe());
            case STILL_GAINING -> Phrase.STILL_GAINING.of(SafeHands.safe());
        };
    }

    @Override
    public String wentBack(Work.WentBack it) {
        return Phrase.WENT_BACK.of();
    }

    @Override
    public String planOver(Work.PlanOver it) {
        return Phrase.PLAN_OVER.of(SafeHands.leaveOff(Phrase.TAKE_OFF_ALL.of()));
    }

    @Override
    public String dialNoted(Work.DialNoted it) {
        return "";
    }

    @Override
    public String nothingToTakeBack(Work.NothingToTakeBack it) {
        return Phrase.NOTHING_TO_TAKE_BACK.of();
    }
}
