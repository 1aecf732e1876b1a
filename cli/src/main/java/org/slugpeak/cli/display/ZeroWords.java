package org.slugpeak.cli.display;

import org.slugpeak.cli.words.RecordSentences;
import org.slugpeak.core.steps.StepsBack;

/** A zero between plus and minus, which has no decibels: the swing on either side is its measure. Immutable. */
record ZeroWords() implements SeekWords {

    @Override
    public String nearer() {
        return ": nearer to zero is nearer";
    }

    @Override
    public String past(double distanceDb) {
        return "past zero: back";
    }

    @Override
    public String stepsBack(StepsBack back, double dropDb, String unit) {
        return "past zero: back " + RecordSentences.steps(back);
    }

    @Override
    public String returned(double lossDb) {
        return "on zero: stop";
    }

    @Override
    public String facts(Scene scene) {
        double swing = scene.level().swing();
        return "largest swing " + Figures.of(swing, swing, scene.unit());
    }

    @Override
    public String distance(Scene scene) {
        return Figures.of(scene.level().value(), SceneWords.size(scene), scene.unit()) + " from zero";
    }

    @Override
    public String best(Scene scene) {
        return "";
    }
}
