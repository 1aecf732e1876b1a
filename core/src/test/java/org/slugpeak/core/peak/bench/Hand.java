package org.slugpeak.core.peak.bench;

import java.util.SplittableRandom;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakListener;

/**
 * A hand that knows nothing but the verdicts: turns until {@code passed}, turns back at 0.6 of the speed until
 * {@code returned}, stops, waits for {@code held}; when the pass is taken back before it could turn, it goes on. It reacts after 0.25 to 0.45 s, moves by stick-slip, and the slug has
 * 6 degrees of backlash.
 */
final class Hand implements PeakListener {

    private static final double BACK_SPEED = 0.6;
    private static final double BACKLASH_DEGREES = 6;
    private static final double RESTS_SECONDS = 1;
    /** Longer than any dwell: with no verdict by then the hand goes on. */
    private static final double PATIENCE_SECONDS = 3.5;

    private final Family family;
    private final SplittableRandom random;

    private double handDegrees;
    private double stuckDegrees;
    private double slipAtDegrees;
    private double slugDegrees;
    private double speed;
    private double slowness = 1;
    private double slownessNext = 1;
    private double slowerAt = Double.POSITIVE_INFINITY;
    private double direction;
    private double pauseUntil;
    private double nextPause;

    private boolean moving;
    private double actAt = Double.POSITIVE_INFINITY;
    private Action action = Action.STOP;
    private double stoppedAt;
    private boolean held;

    private enum Action {
        TURN_BACK,
        REVERSE_FAST,
        STOP
    }

    Hand(Family family, double startDegrees, SplittableRandom random) {
        this.family = family;
        this.random = random;
        this.slugDegrees = startDegrees;
        this.handDegrees = startDegrees;
        this.stuckDegrees = startDegrees;
        this.speed = family.speedDegreesPerSecond();
        double towards = -Math.signum(startDegrees);
        this.direction = family.hand() == Family.Habit.WRONG_WAY ? -towards : towards;
        this.slipAtDegrees = 1;
        this.stoppedAt = RESTS_SECONDS - PATIENCE_SECONDS;
        this.nextPause = RESTS_SECONDS + 1;
    }

    void advance(double now, double seconds) {
        if (now >= actAt) {
            act(now);
        }
        if (now >= slowerAt) {
            slowerAt = Double.POSITIVE_INFINITY;
            slowness = slownessNext;
        }
        if (!moving && now - stoppedAt >= PATIENCE_SECONDS) {
            moving = true;
        }
        if (!moving || paused(now)) {
            return;
        }
        handDegrees += direction * speed / slowness * seconds;
        if (Math.abs(handDegrees - stuckDegrees) >= slipAtDegrees) {
            stuckDegrees = handDegrees;
            slipAtDegrees = random.nextDouble(0.2, 0.04 * family.speedDegreesPerSecond());
        }
        double play = BACKLASH_DEGREES / 2;
        slugDegrees = Math.max(stuckDegrees - play, Math.min(slugDegrees, stuckDegrees + play));
    }

    private boolean paused(double now) {
        if (family.hand() != Family.Habit.PAUSES) {
            return false;
        }
        if (now >= nextPause) {
            pauseUntil = now + random.nextDouble(0.5, 2.5);
            nextPause = pauseUntil + random.nextDouble(0.5, 3);
        }
        return now < pauseUntil;
    }

    private void act(double now) {
        actAt = Double.POSITIVE_INFINITY;
        switch (action) {
            case STOP -> {
                moving = false;
                stoppedAt = now;
            }
            case TURN_BACK -> {
                moving = true;
                direction = -direction;
                speed = BACK_SPEED * family.speedDegreesPerSecond();
            }
            case REVERSE_FAST -> direction = -direction;
        }
    }

    private void decide(long tNanos, Action next) {
        action = next;
        actAt = tNanos / 1e9 + reactionSeconds();
    }

    private double reactionSeconds() {
        double late = family.hand() == Family.Habit.OVERSHOOTS ? 0.5 : 0;
        return random.nextDouble(0.25, 0.45) + late;
    }

    /** Turns slower by a factor from now on; only a hand of which that is asked. */
    void turnSlower(long tNanos, double factor) {
        slownessNext = factor * slowness;
        slowerAt = tNanos / 1e9 + reactionSeconds();
    }

    double slugDegrees() {
        return slugDegrees;
    }

    boolean hasHeld() {
        return held;
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        decide(tNanos, Action.TURN_BACK);
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        decide(tNanos, Action.STOP);
    }

    @Override
    public void held(long tNanos, double value, double lossDb) {
        held = true;
    }

    @Override
    public void twoPeaks(long tNanos, double first, double second, double dipDb) {
        if (actAt == Double.POSITIVE_INFINITY) {
            decide(tNanos, Action.TURN_BACK);
        }
    }

    @Override
    public void noPeak(long tNanos, NoPeakReason reason) {
        if (reason == NoPeakReason.REVERSED && action == Action.TURN_BACK) {
            actAt = Double.POSITIVE_INFINITY;
        }
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        if (hint == Hint.WRONG_WAY) {
            decide(tNanos, Action.REVERSE_FAST);
        }
    }
}
