package org.slugpeak.core.peak.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.slugpeak.core.peak.Hint;

/** A hand that obeys every word, and the words that the reading does not bear out. */
final class Contradictions extends Obeyed {

    private static final List<String> COUNTED =
            List.of("other way, rising", "returned short", "other way again", "not held");
    private static final double STEP_SECONDS = 0.002;
    private static final double GIVE_UP_SECONDS = 90;
    /** Clumps that begin a second, where lines are lost. */
    private static final double LOST = 0.7;
    /** The trend of the truth is taken over so long. */
    private static final double TREND_SECONDS = 0.2;

    /** The smoothed reading that a return rests on averages over about so long (docs/peak-finder.md, step 7). */
    private static final double RETURN_SECONDS = 0.35;
    /** Allowed on a return, with two sigma of that mean. */
    private static final double SHORT_DB = 0.15;

    private final Family family;
    private final double lostClumps;
    private final boolean slows;
    private final Meter meter;
    private final SplittableRandom random;
    private final double[] before = new double[(int) Math.round(TREND_SECONDS / STEP_SECONDS)];
    private int steps;
    private double direction;
    private boolean toldThisWay;
    private int rising;
    private int shortOf;
    private int again;

    private Contradictions(Family family, double lostClumps, boolean slows, SplittableRandom random) {
        super(new Hand(family, Run.start(family, random), random.split()));
        this.family = family;
        this.lostClumps = lostClumps;
        this.slows = slows;
        this.random = random;
        this.meter = new Meter(family, random.split());
    }

    static List<Trouble> all() {
        List<Trouble> troubles = new ArrayList<>();
        for (double rate : new double[] {5, 50}) {
            for (double noise : new double[] {0.0035, 0.02}) {
                for (double lost : new double[] {0, LOST}) {
                    for (double speed : new double[] {40, 120}) {
                        troubles.add(trouble(Family.IF_SLUG, speed, rate, noise, Family.Habit.PLAIN, lost, true));
                    }
                    troubles.add(trouble(Family.TRIMMER, 25, rate, noise, Family.Habit.PLAIN, lost, true));
                }
            }
        }
        for (double lost : new double[] {0, LOST}) {
            troubles.add(trouble(Family.TRIMMER, 60, 50, 0.0035, Family.Habit.PLAIN, lost, true));
            troubles.add(trouble(Family.IF_SLUG, 40, 50, 0.0035, Family.Habit.WRONG_WAY, lost, true));
            troubles.add(trouble(Family.IF_SLUG, 40, 50, 0.0035, Family.Habit.OVERSHOOTS, lost, true));
            troubles.add(trouble(Family.IF_SLUG, 120, 50, 0.0035, Family.Habit.OVERSHOOTS, lost, true));
        }
        for (double lost : new double[] {0, LOST}) {
            troubles.add(trouble(Family.TRIMMER, 60, 50, 0.0035, Family.Habit.PLAIN, lost, false));
            troubles.add(trouble(Family.IF_SLUG, 120, 50, 0.0035, Family.Habit.OVERSHOOTS, lost, false));
        }
        return troubles;
    }

    private static Trouble trouble(
            double halfWidth, double speed, double rate, double noise, Family.Habit habit, double lost, boolean slows) {
        String name = String.format(
                Locale.ROOT,
                "%s %.0f deg/s, %.0f/s, %.2f %%%s%s%s",
                halfWidth == Family.TRIMMER ? "trimmer" : "slug",
                speed,
                rate,
                100 * noise,
                habit == Family.Habit.PLAIN
                        ? ""
                        : ", " + habit.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                lost > 0 ? ", lines lost" : "",
                slows ? "" : ", never slower");
        Family family = new Family(name, halfWidth, speed, rate, noise, Family.Law.CLEAN, habit);
        return new Trouble(name, COUNTED, random -> new Contradictions(family, lost, slows, random).run());
    }

    private int[] run() {
        Watcher watcher = Watcher.finder(this);
        double now = 0;
        double next = meter.interval();
        double lostUntil = 0;
        while (!hand.hasHeld() && now < GIVE_UP_SECONDS) {
            double step = Math.min(STEP_SECONDS, next - now);
            now += step;
            before[steps++ % before.length] = hand.slugDegrees();
            hand.advance(now, step);
            reversal();
            if (now >= next) {
                double value = meter.read(now, hand.slugDegrees());
                lostUntil = random.nextDouble() < lostClumps / family.rate()
                        ? now + random.nextDouble(0.1, 0.8)
                        : lostUntil;
                if (now >= lostUntil) {
                    watcher.accept(Math.round(now * 1e9), value);
                }
                next = now + meter.interval();
            }
        }
        return new int[] {rising, shortOf, again, Trouble.count(!hand.hasHeld())};
    }

    private double earlierDegrees() {
        return before[steps % before.length];
    }

    private void reversal() {
        double turned = Math.signum(hand.slugDegrees() - before[(steps - 1) % before.length]);
        if (turned != 0 && turned != direction) {
            direction = turned;
            toldThisWay = false;
        }
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        double sigmaDb = 20 / Math.log(10) * family.noise() / Math.sqrt(RETURN_SECONDS * family.rate());
        double missingDb = -20 * Math.log10(Meter.truth(family, hand.slugDegrees()));
        shortOf += Trouble.count(missingDb > SHORT_DB + 2 * sigmaDb);
        super.returned(tNanos, value, lossDb);
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        if (hint == Hint.WRONG_WAY) {
            double rises = Meter.truth(family, hand.slugDegrees()) - Meter.truth(family, earlierDegrees());
            rising += Trouble.count(rises > 0);
            again += Trouble.count(toldThisWay);
            toldThisWay = true;
        }
        if (hint == Hint.TURN_SLOWER && slows) {
            hand.turnSlower(tNanos, amount);
        }
        super.hint(tNanos, hint, amount);
    }
}
