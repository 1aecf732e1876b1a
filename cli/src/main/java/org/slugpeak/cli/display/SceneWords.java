package org.slugpeak.cli.display;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.reading.Condition;

/** Puts a scene into words: what each part of the screen and each plain line says. Stateless. */
final class SceneWords {

    private SceneWords() {}

    /** The reading itself; dashes while there is none to be believed. */
    static Figures.Figure reading(Scene scene) {
        Level level = scene.level();
        if (level.condition() == Condition.OVER_RANGE) {
            return new Figures.Figure("OVER", "");
        }
        if (scene.link().isPresent() || Double.isNaN(level.value())) {
            return new Figures.Figure("----", "");
        }
        return Figures.of(level.value(), size(scene), scene.unit());
    }

    private static double size(Scene scene) {
        return scene.seek() == Seek.PEAK
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
            return "NO LINK";
        }
        if (scene.overload().isPresent()) {
            return "OVERLOAD";
        }
        Verdict.Call call = scene.verdict().call();
        return call == Verdict.Call.BACK ? call.word() + howFar(scene.level().distanceDb()) : call.word();
    }

    private static String howFar(double distanceDb) {
        return distanceDb < Level.FARTHEST_DB ? String.format(Locale.ROOT, " %.1f", distanceDb) : "";
    }

    static String sentence(Scene scene) {
        if (scene.request().isPresent()) {
            return scene.request().get().text();
        }
        return verdict(scene);
    }

    /** The verdict, with the distance as it is now. */
    static String verdict(Scene scene) {
        boolean counts = scene.verdict().counted() && !scene.level().isNearing(scene.seek());
        if (scene.verdict().call() == Verdict.Call.BACK && !counts) {
            return EventWords.past(scene.level().distanceDb(), scene.seek());
        }
        return scene.verdict().sentence();
    }

    static String trend(Scene scene) {
        Trend trend = scene.level().trend();
        if (trend == Trend.STEADY) {
            return "steady";
        }
        return trend.code() + ": " + (scene.level().isNearing(scene.seek()) ? "closer" : "further");
    }

    /** Percent, decibels and the best itself. */
    static String facts(Scene scene) {
        Level level = scene.level();
        if (scene.seek() == Seek.ZERO) {
            return "largest swing " + Figures.of(level.swing(), level.swing(), scene.unit());
        }
        if (!level.hasBest()) {
            return "no best yet";
        }
        return String.format(
                Locale.ROOT,
                "%.1f %%  %s %s",
                level.percentOfBest(),
                fromBest(scene),
                Figures.of(level.best(), size(scene), scene.unit()));
    }

    /** How far the reading is from what is sought, for a line that has nothing else to say it with. */
    static String distance(Scene scene) {
        if (scene.seek() == Seek.ZERO) {
            return Figures.of(scene.level().value(), size(scene), scene.unit()) + " from zero";
        }
        return scene.level().hasBest() ? fromBest(scene) : "no best yet";
    }

    private static String fromBest(Scene scene) {
        String side = scene.seek() == Seek.DIP ? " above least" : " below best";
        double distanceDb = scene.level().distanceDb();
        String amount = distanceDb < Level.FARTHEST_DB
                ? String.format(Locale.ROOT, "%.2f dB", distanceDb)
                : Figures.decibels(distanceDb);
        return amount + side;
    }
}
