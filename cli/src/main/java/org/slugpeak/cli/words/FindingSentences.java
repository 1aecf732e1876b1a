package org.slugpeak.cli.words;

import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Held;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.Returned;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.steps.StepsBack;

/** What the finder says beside its verdicts; those say themselves by where the reading is. Immutable. */
final class FindingSentences implements Finding.Matcher<String> {

    /** An error that would read 0.0 needs another place. */
    private static final double TENTHS_FROM = 0.095;

    @Override
    public String passed(Passed it) {
        return "";
    }

    @Override
    public String returned(Returned it) {
        return "";
    }

    @Override
    public String held(Held it) {
        return "";
    }

    @Override
    public String twoPeaks(TwoPeaks it) {
        return "";
    }

    @Override
    public String noPeak(NoPeak it) {
        return "";
    }

    @Override
    public String hinted(Finding.Hinted it) {
        return switch (it.hint()) {
            case NEGATIVE_GOING -> Phrase.NEGATIVE_GOING.of();
            case WRONG_WAY -> Phrase.WRONG_WAY.of();
            case BEST_AGED -> Phrase.BEST_AGED.of(it.amount());
            case STOPPED_SHORT -> Phrase.STOPPED_SHORT.of(it.amount());
            case SIGNAL_GONE -> Phrase.SIGNAL_GONE.of(SafeHands.safe());
            case SIGNAL_BACK -> Phrase.SIGNAL_BACK.of();
            case TURN_SLOWER -> Phrase.TURN_SLOWER.of(it.amount());
        };
    }

    @Override
    public String furtherPast(Finding.FurtherPast it) {
        return Phrase.FURTHER_PAST.of(steps(it.back()));
    }

    /** The steps and how well they are known, for example {@code 1.4 steps (+-0.2)}. */
    static String steps(StepsBack back) {
        Phrase format = back.stepsError() < TENTHS_FROM ? Phrase.STEPS_FINE : Phrase.STEPS;
        return format.of(back.steps(), back.stepsError());
    }
}
