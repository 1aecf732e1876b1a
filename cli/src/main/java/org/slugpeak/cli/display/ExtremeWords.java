package org.slugpeak.cli.display;

import java.util.Locale;
import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.core.steps.StepsBack;

/**
 * A greatest or a smallest reading, spoken of by its distance in decibels. Immutable.
 *
 * @param noun what it is called
 * @param nearer which readings are nearer, where that does not go without saying
 * @param side on which side of the best the readings lie
 */
record ExtremeWords(String noun, String nearer, String side) implements SeekWords {

    private static final String NONE = "no best yet";

    @Override
    public String past(double distanceDb) {
        return "past it: back, " + Figures.decibels(distanceDb);
    }

    @Override
    public String stepsBack(StepsBack back, double dropDb, String unit) {
        String coarse = Double.isNaN(back.topError()) ? ", or more: smaller steps find it" : "";
        String top = Figures.withError(back.top(), back.topError(), unit) + coarse;
        return "past it: back " + RecordSentences.steps(back) + ", " + Figures.decibels(dropDb) + "; the " + noun
                + " is " + top;
    }

    @Override
    public String returned(double lossDb) {
        return "on the " + noun + ": stop" + EventWords.lost(lossDb);
    }

    @Override
    public String facts(Scene scene) {
        Level level = scene.level();
        if (!level.hasBest()) {
            return NONE;
        }
        return String.format(
                Locale.ROOT,
                "%.1f %%  %s %s",
                level.percentOfBest(),
                fromBest(level),
                Figures.of(level.best(), SceneWords.size(scene), scene.unit()));
    }

    @Override
    public String distance(Scene scene) {
        return scene.level().hasBest() ? fromBest(scene.level()) : NONE;
    }

    private String fromBest(Level level) {
        double distanceDb = level.distanceDb();
        String amount = distanceDb < Level.FARTHEST_DB
                ? String.format(Locale.ROOT, "%.2f dB", distanceDb)
                : Figures.decibels(distanceDb);
        return amount + side;
    }

    @Override
    public String best(Scene scene) {
        Level level = scene.level();
        return level.hasBest() ? " " + Figures.of(level.best(), level.best(), scene.unit()) : "";
    }
}
