package org.slugpeak.cli.display;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.cli.words.CodeWords;
import org.slugpeak.cli.words.ScreenPhrase;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;

/** Puts a scene into words: what each part of the screen and each plain line says. Stateless. */
final class SceneWords {

    private SceneWords() {}

    /** The reading itself; dashes while there is none to be believed. */
    static Figures.Figure reading(Scene scene) {
        Level level = scene.level();
        if (level.condition() == Condition.OVER_RANGE) {
            return new Figures.Figure(ScreenPhrase.OVER.of(), "");
        }
        if (scene.link().isPresent() || Double.isNaN(level.value())) {
            return new Figures.Figure("----", "");
        }
        return Figures.of(level.value(), size(scene), scene.unit());
    }

    static double size(Scene scene) {
        return scene.seek().seeksStrongest()
                ? scene.level().best()
                : Math.max(scene.level().swing(), Math.abs(scene.level().value()));
    }

    /** What is wrong, in the order of urgency; empty when nothing is. */
    static String alarm(Scene scene) {
        return Stream.of(scene.link(), scene.overload())
                .flatMap(Optional::stream)
                .collect(Collectors.joining("  +  "));
    }

    static String call(Scene scene) {
        if (scene.link().isPresent()) {
            return ScreenPhrase.NO_LINK.of();
        }
        if (scene.overload().isPresent()) {
            return ScreenPhrase.OVERLOAD.of();
        }
        Verdict.Call call = scene.verdict().call();
        return call == Verdict.Call.BACK ? call.word() + howFar(scene.level().distanceDb()) : call.word();
    }

    private static String howFar(double distanceDb) {
        return distanceDb < Level.FARTHEST_DB ? String.format(Locale.ROOT, " %.1f", distanceDb) : "";
    }

    static String sentence(Scene scene) {
        if (scene.toDo().isPresent()) {
            return scene.toDo().get().text();
        }
        return verdict(scene);
    }

    /** The verdict, with the distance as it is now. */
    static String verdict(Scene scene) {
        boolean counts = scene.verdict().counted() && !scene.level().isNearing(scene.seek());
        if (scene.verdict().call() == Verdict.Call.BACK && !counts) {
            return SeekWords.of(scene.seek()).past(scene.level().distanceDb());
        }
        return scene.verdict().sentence();
    }

    static String trend(Scene scene) {
        Trend trend = scene.level().trend();
        String word = CodeWords.of(trend.code());
        if (trend == Trend.STEADY) {
            return word;
        }
        return (scene.level().isNearing(scene.seek()) ? ScreenPhrase.CLOSER : ScreenPhrase.FURTHER).of(word);
    }

    /** Percent, decibels and the best itself. */
    static String facts(Scene scene) {
        return SeekWords.of(scene.seek()).facts(scene);
    }

    /** How far the reading is from what is sought, for a line that has nothing else to say it with. */
    static String distance(Scene scene) {
        return SeekWords.of(scene.seek()).distance(scene);
    }
}
