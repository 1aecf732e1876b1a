package org.slugpeak.cli.moment;

import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.cli.words.SeekPhrase;
import org.slugpeak.core.steps.StepsBack;

/** A zero between plus and minus, which has no decibels: the swing on either side is its measure. Immutable. */
record ZeroWords() implements SeekWords {

    @Override
    public boolean compares(Moment moment) {
        return true;
    }

    @Override
    public String nearer() {
        return SeekPhrase.ZERO_IS_NEARER.of();
    }

    @Override
    public String past(double distanceDb) {
        return SeekPhrase.PAST_ZERO.of();
    }

    @Override
    public String stepsBack(StepsBack back, double dropDb, String unit) {
        return SeekPhrase.STEPS_BACK_ZERO.of(RecordSentences.steps(back));
    }

    @Override
    public String returned(double lossDb) {
        return SeekPhrase.ON_ZERO.of();
    }

    @Override
    public String facts(Moment moment) {
        double swing = moment.level().swing();
        return SeekPhrase.LARGEST_SWING.of(Figures.of(swing, swing, moment.unit()));
    }

    @Override
    public String distance(Moment moment) {
        return SeekPhrase.FROM_ZERO.of(Figures.of(moment.level().value(), MomentWords.size(moment), moment.unit()));
    }

    @Override
    public String best(Moment moment) {
        return "";
    }
}
