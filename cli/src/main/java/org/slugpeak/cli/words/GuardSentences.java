package org.slugpeak.cli.words;

import org.slugpeak.core.session.Guard;

/** What a person must judge while a plan is carried out. Immutable. */
final class GuardSentences implements Guard.Matcher<String> {

    @Override
    public String stillShort(Guard.StillShort it) {
        return Double.isNaN(it.missingDb()) ? Phrase.NOT_THERE.of() : Phrase.STILL_SHORT.of(it.missingDb());
    }

    @Override
    public String begunAgain(Guard.BegunAgain it) {
        return Phrase.BEGUN_AGAIN.of();
    }

    @Override
    public String twoMaxima(Guard.TwoMaxima it) {
        return Phrase.TWO_MAXIMA.of();
    }

    @Override
    public String choice(Guard.Choice it) {
        return Phrase.CHOICE.of();
    }

    @Override
    public String endOfTravel(Guard.EndOfTravel it) {
        return Phrase.END_OF_TRAVEL.of(SafeHands.safe());
    }

    @Override
    public String lateGain(Guard.LateGain it) {
        return Phrase.LATE_GAIN.of(it.adjuster(), it.gainDb(), it.round(), SafeHands.safe());
    }

    @Override
    public String clampGainControl(Guard.ClampGainControl it) {
        return Phrase.STILL_FLATTENED.of(SafeHands.at(Phrase.CLAMP_GAIN_CONTROL.of()));
    }
}
