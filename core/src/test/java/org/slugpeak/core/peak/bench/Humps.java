package org.slugpeak.core.peak.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Two humps, 0.3 to 2 dB apart in height and 1.5 to 4 half-widths in place. The hand sweeps over both, rests beyond, comes back to the
 * top of the lower one and rests there. One hand obeys the first pass as far as the return before it goes on, the other does not.
 */
final class Humps {

    private static final List<String> COUNTED =
            List.of("best off", "returned on lower", "held on lower", "silent", "no two-peaks");
    private static final double HALF_WIDTH = Family.IF_SLUG;
    private static final double NOISE = 0.0035;
    private static final double STEP_SECONDS = 0.01;
    /** Time from a word to the hand. */
    private static final double REACTION_SECONDS = 0.35;

    private final double lower;
    private final double lowerDegrees;
    private final double higherDegrees;

    private Humps(SplittableRandom random) {
        lower = Math.pow(10, -random.nextDouble(0.3, 2) / 20);
        double apart = random.nextDouble(1.5, 4) * HALF_WIDTH;
        boolean lowerFirst = random.nextBoolean();
        lowerDegrees = lowerFirst ? apart / 2 : -apart / 2;
        higherDegrees = -lowerDegrees;
    }

    static List<Trouble> all() {
        List<Trouble> troubles = new ArrayList<>();
        for (double rate : new double[] {5, 50}) {
            for (boolean obeys : new boolean[] {false, true}) {
                String name = String.format(Locale.ROOT, "two humps, %s, %.0f/s", obeys ? "obeys" : "goes on", rate);
                troubles.add(new Trouble(name, COUNTED, random -> new Humps(random).run(random, rate, obeys)));
            }
        }
        return troubles;
    }

    private double level(double degrees) {
        return Math.max(
                1 / Math.hypot(1, (degrees - higherDegrees) / HALF_WIDTH),
                lower / Math.hypot(1, (degrees - lowerDegrees) / HALF_WIDTH));
    }

    private int[] run(SplittableRandom random, double rate, boolean obeys) {
        double outside = Math.abs(lowerDegrees) + 2 * HALF_WIDTH;
        Words words = new Words();
        Watcher watcher = Watcher.finder(words);
        Obeying hand = new Obeying(outside, obeys, lowerDegrees);
        double next = 0;
        double back = Double.POSITIVE_INFINITY;
        for (double t = 0; !hand.done(t); t += STEP_SECONDS) {
            hand.advance(t, words);
            back = hand.comesBack() ? Math.min(back, t) : back;
            if (t >= next) {
                words.at(t);
                watcher.accept(Math.round(t * 1e9), level(hand.degrees()) + NOISE * random.nextGaussian());
                next += 1 / rate;
            }
        }
        double since = back;
        return new int[] {
            Trouble.count(Trouble.off(watcher.best(), 1)),
            Trouble.count(words.told("returned", w -> w.seconds() > since && onLower(hand, w.seconds()))),
            Trouble.count(words.told("held", w -> w.seconds() > since && onLower(hand, w.seconds()))),
            Trouble.count(!words.told("passed", w -> w.seconds() < since)),
            Trouble.count(!words.told("two-peaks", w -> true))
        };
    }

    /** Whether the hand came back to where the lower hump is the nearer one. */
    private boolean onLower(Obeying hand, double seconds) {
        double degrees = hand.degreesAt(seconds);
        return lower / Math.hypot(1, (degrees - lowerDegrees) / HALF_WIDTH) >= level(degrees);
    }

    /** Rests, sweeps over both humps, rests, comes back to a place and rests; obeying, it turns back once at the first pass. */
    private static final class Obeying {
        private static final double SPEED = 40;
        private static final double REST_SECONDS = 1;
        private static final double LAST_REST_SECONDS = 8;
        private static final double PATIENCE_SECONDS = 8;

        private final double outside;
        private final double aim;
        private final List<Double> path = new ArrayList<>();
        private double degrees;
        private boolean obeys;
        private boolean comesBack;
        private double restUntil = REST_SECONDS;
        private double backSince = Double.NaN;
        private double doneAt = Double.POSITIVE_INFINITY;

        Obeying(double outside, boolean obeys, double aim) {
            this.outside = outside;
            this.degrees = outside;
            this.obeys = obeys;
            this.aim = aim;
        }

        double degrees() {
            return degrees;
        }

        boolean comesBack() {
            return comesBack;
        }

        boolean done(double t) {
            return t >= doneAt;
        }

        double degreesAt(double seconds) {
            return path.get((int) Math.min(path.size() - 1L, Math.round(seconds / STEP_SECONDS)));
        }

        void advance(double t, Words words) {
            path.add(degrees);
            if (t < restUntil) {
                return;
            }
            obey(t, words);
            if (t >= restUntil) {
                degrees += turn() * STEP_SECONDS;
                arrive(t);
            }
        }

        private void obey(double t, Words words) {
            if (!obeys) {
                return;
            }
            if (Double.isNaN(backSince)) {
                backSince = words.told("passed", w -> w.seconds() < t - REACTION_SECONDS) ? t : Double.NaN;
            } else if (words.told("returned", w -> w.seconds() < t - REACTION_SECONDS)
                    || t > backSince + PATIENCE_SECONDS) {
                obeys = false;
                backSince = Double.NaN;
                restUntil = t + 3 * REST_SECONDS;
            }
        }

        private double turn() {
            return !Double.isNaN(backSince) ? 0.6 * SPEED : comesBack ? 0.6 * SPEED : -SPEED;
        }

        private void arrive(double t) {
            if (!comesBack && degrees <= -outside) {
                comesBack = true;
                restUntil = t + REST_SECONDS;
            } else if (comesBack && degrees >= aim) {
                restUntil = Double.POSITIVE_INFINITY;
                doneAt = t + LAST_REST_SECONDS;
            }
        }
    }
}
