package org.slugpeak.cli.moment;

import java.util.Locale;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.cli.words.SeekPhrase;
import org.slugpeak.core.steps.StepsBack;

/**
 * A greatest or a smallest reading, spoken of by its distance in decibels. Immutable.
 *
 * @param noun what it is called
 * @param nearer which readings are nearer, where that does not go without saying
 * @param side says how far from the best, on its side
 */
record ExtremeWords(String noun, String nearer, SeekPhrase side) implements SeekWords {

    @Override
    public boolean compares(Moment moment) {
        return moment.level().hasBest();
    }

    @Override
    public String past(double distanceDb) {
        return SeekPhrase.PAST.of(Figures.decibels(distanceDb));
    }

    @Override
    public String stepsBack(StepsBack back, double dropDb, String unit) {
        String top = Figures.withError(back.top(), back.topError(), unit);
        return SeekPhrase.STEPS_BACK.of(
                RecordSentences.steps(back),
                Figures.decibels(dropDb),
                noun,
                Double.isNaN(back.topError()) ? SeekPhrase.COARSE.of(top) : top);
    }

    @Override
    public String returned(double lossDb) {
        return SeekPhrase.ON_IT.of(noun, EventWords.lost(lossDb));
    }

    @Override
    public String facts(Moment moment) {
        Level level = moment.level();
        if (!level.hasBest()) {
            return SeekPhrase.NO_BEST.of();
        }
        return String.format(
                Locale.ROOT,
                "%.1f %%  %s %s",
                level.percentOfBest(),
                fromBest(level),
                Figures.of(level.best(), MomentWords.size(moment), moment.unit()));
    }

    @Override
    public String distance(Moment moment) {
        return moment.level().hasBest() ? fromBest(moment.level()) : SeekPhrase.NO_BEST.of();
    }

    private String fromBest(Level level) {
        double distanceDb = level.distanceDb();
        String amount = distanceDb < Level.FARTHEST_DB
                ? String.format(Locale.ROOT, "%.2f dB", distanceDb)
                : Figures.decibels(distanceDb);
        return side.of(amount);
    }

    @Override
    public String best(Moment moment) {
        Level level = moment.level();
        return level.hasBest() ? " " + Figures.of(level.best(), level.best(), moment.unit()) : "";
    }
}
