package org.slugpeak.core.peak.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;

/** Straight travels during which somebody is at the generator: off and on again, or halved without a word. */
final class Generator {

    private static final double HALF_WIDTH = Family.IF_SLUG;
    private static final double SPEED = 40;
    private static final double NOISE = 0.0035;
    /** A meter of four digits shows zero as zero. */
    private static final double DIGIT = 1e-4;

    /** Where the hand rests while the generator is off. */
    private enum Place {
        AT_FIRST("at first", 2),
        BEFORE("before the peak", 1.1),
        IN("in the peak", 0),
        AFTER("after the peak", -1);

        final String words;
        final double halfWidths;

        Place(String words, double halfWidths) {
            this.words = words;
            this.halfWidths = halfWidths;
        }
    }

    private Generator() {}

    static List<Trouble> all() {
        List<Trouble> troubles = new ArrayList<>();
        for (double rate : new double[] {3, 50}) {
            for (Place place : Place.values()) {
                for (double near : new double[] {0, 2e-5}) {
                    String name = String.format(
                            Locale.ROOT, "%s %s, %.0f/s", near == 0 ? "zero" : "near zero", place.words, rate);
                    List<String> counted = List.of("crash", "pass of it", "aged", "best off", "silent");
                    troubles.add(new Trouble(name, counted, random -> off(random, rate, place, near)));
                }
            }
            troubles.add(new Trouble(
                    String.format(Locale.ROOT, "halved on the way up, %.0f/s", rate),
                    List.of("pass of it", "best off", "silent"),
                    random -> halved(random, rate)));
        }
        return troubles;
    }

    private static int[] off(SplittableRandom random, double rate, Place place, double near) {
        double lasts = random.nextDouble(1, 3);
        Script script = new Script(2 * HALF_WIDTH, SPEED);
        double off = 0;
        if (place != Place.AT_FIRST) {
            script.rest(1).turnTo((place.halfWidths + random.nextDouble(-0.1, 0.1)) * HALF_WIDTH);
            off = script.endSeconds() + 0.3;
        }
        script.rest(lasts + 0.6);
        double on = script.endSeconds();
        double top = on + Math.max(0, script.degrees(on)) / SPEED;
        script.turnTo(-2.5 * HALF_WIDTH);
        double until = place == Place.AFTER ? script.endSeconds() : top;
        script.turnTo(0).rest(4);
        Words words = new Words();
        Watcher watcher = Watcher.finder(words);
        double begin = off;
        try {
            play(watcher, words, script, rate, t -> {
                boolean isOff = t >= begin && t < begin + lasts;
                double level = isOff ? 0 : 1 / Math.hypot(1, script.degrees(t) / HALF_WIDTH);
                double value = level + (isOff ? near : NOISE) * random.nextGaussian();
                return near > 0 ? value : DIGIT * Math.rint(value / DIGIT);
            });
        } catch (RuntimeException crash) {
            return new int[] {1, 0, 0, 0, 0};
        }
        return new int[] {
            0,
            (int) words.count("passed", w -> w.seconds() >= begin && w.seconds() < until),
            (int) words.count("best-aged", w -> true),
            Trouble.count(Trouble.off(watcher.best(), 1)),
            Trouble.count(!words.told("passed", w -> true))
        };
    }

    private static int[] halved(SplittableRandom random, double rate) {
        double at = random.nextDouble(0.5, 1.5) * HALF_WIDTH;
        double when = 1 + (2 * HALF_WIDTH - at) / SPEED;
        double top = 1 + 2 * HALF_WIDTH / SPEED;
        Script script = new Script(2 * HALF_WIDTH, SPEED).rest(1).turnTo(-2.5 * HALF_WIDTH);
        Words words = new Words();
        Watcher watcher = Watcher.finder(words);
        play(watcher, words, script, rate, t -> {
            double level = 1 / Math.hypot(1, script.degrees(t) / HALF_WIDTH);
            return (t < when ? level : level / 2) + NOISE * random.nextGaussian();
        });
        return new int[] {
            (int) words.count("passed", w -> w.seconds() < top),
            Trouble.count(Trouble.off(watcher.best(), 0.5)),
            Trouble.count(!words.told("passed", w -> w.seconds() > top))
        };
    }

    /** Asks for the best after every reading, as the screen does; whatever is not finite ends the run. */
    private static void play(
            Watcher watcher, Words words, Script script, double rate, DoubleUnaryOperator readingAtSeconds) {
        for (double t = 0; t < script.endSeconds(); t += 1 / rate) {
            words.at(t);
            watcher.accept(Math.round(t * 1e9), readingAtSeconds.applyAsDouble(t));
            if (Double.isInfinite(watcher.best())) {
                throw new ArithmeticException("infinite best at " + t + " s");
            }
        }
    }
}
