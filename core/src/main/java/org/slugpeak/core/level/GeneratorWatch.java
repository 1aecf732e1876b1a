package org.slugpeak.core.level;

import java.util.OptionalDouble;
import org.slugpeak.core.decibel.Decibels;

/**
 * Asks for less generator before the reading leaves its window, sees the user's cut, and says by what the readings that follow
 * must be multiplied to go on where the earlier ones ended. Works on magnitudes above rest. One thread at a time.
 */
final class GeneratorWatch {

    /** The prompt comes at this share of the window's end. */
    private static final double PROMPT_SHARE = 0.87;

    private static final long HIGH_NANOS = 100_000_000L;
    private static final long BETWEEN_PROMPTS_NANOS = 3_000_000_000L;
    private static final long REPEAT_NANOS = 10_000_000_000L;
    private static final long ARMED_NANOS = 15_000_000_000L;

    /** Faster than any slug: a step of the generator. */
    private static final double STEP_DB = 0.6;

    private static final double STEP_DB_PER_SECOND = 4;

    /**
     * And so many times what the reading fell in as long a time just before. A circuit that is turned evenly from its top falls as the
     * square of the time: in one such time by 3, 5/3, 7/5 and so on of what it fell in the one before.
     */
    private static final double ABRUPT = 3;

    /** In so many readings the fall of a step is seen; by then they are no measure of the level before it. */
    private static final int FALLING = 5;

    /** Less than this is no cut. */
    private static final double LEAST_CUT_DB = 0.7;

    /** More than this in the tenths of a second before the cut: the slug was moving, so the known factor counts. */
    private static final double MOVING_SHARE = 0.01;

    private static final double STANDING_SHARE = 0.01;
    private static final double SETTLE_SECONDS = 0.5;
    private static final double GIVE_UP_SECONDS = 6;

    private final LevelListener listener;
    private final MeterScale meter;
    private final RecentReadings before = new RecentReadings(0.4);
    private final RecentReadings after = new RecentReadings(0.3);

    private double highVolts = Double.POSITIVE_INFINITY;
    private long promptedNanos = Long.MIN_VALUE / 2;
    private double factor = 0.5;
    private double scale = 1;
    private boolean stepping;
    private boolean announced;
    private boolean certain;
    private boolean awaited;
    private long stepNanos;
    private double levelBefore;
    private boolean movingBefore;
    private long lastNanos;
    private long highSinceNanos;

    /** {@code meter}: what a straight detector would show of a level above rest. */
    GeneratorWatch(LevelListener listener, MeterScale meter) {
        this.listener = listener;
        this.meter = meter;
    }

    void window(double newHighVolts) {
        highVolts = newHighVolts;
    }

    /** What a level is to be divided by to compare with those from before the cuts. */
    double scale() {
        return scale;
    }

    /** While the generator is being turned nothing can be said of the peak. */
    boolean isStepping() {
        return stepping;
    }

    /** Whether a prompt stands that the user may still obey. */
    boolean isArmed(long tNanos) {
        return tNanos - promptedNanos < ARMED_NANOS;
    }

    void forgetScale() {
        scale = 1;
    }

    /** A check put the generator elsewhere: what was read before it is no measure of a step. */
    void gap() {
        before.clear();
    }

    void announceCut(long tNanos, double newFactor) {
        announced = true;
        factor = certain ? factor : newFactor;
        promptedNanos = tNanos;
        beginStep(tNanos);
    }

    /** The generator will say when it stands, however long that takes: until then nothing that is read counts. */
    void awaitTurn(long tNanos) {
        if (!stepping) {
            announceCut(tNanos, 1);
        }
        awaited = true;
    }

    boolean isAwaited() {
        return awaited;
    }

    /** The generator says that it was changed, and by how much; what is read from now on counts. */
    void turned(long tNanos, double newFactor) {
        if (!stepping) {
            announceCut(tNanos, newFactor);
        }
        awaited = false;
        factor = certain ? factor * newFactor : newFactor;
        certain = true;
        stepNanos = tNanos;
        after.clear();
    }

    void accept(long tNanos, double above, double rest) {
        double magnitude = Math.abs(above);
        if (stepping) {
            settle(tNanos, magnitude);
        } else if (isArmed(tNanos) && isStep(tNanos, magnitude)) {
            before.dropNewest(FALLING);
            beginStep(tNanos);
        } else {
            before.add(tNanos, magnitude);
            prompt(tNanos, above, rest);
        }
        lastNanos = tNanos;
    }

    private boolean isStep(long tNanos, double magnitude) {
        if (before.size() < 5) {
            return false;
        }
        double seconds = (tNanos - lastNanos) / 1e9;
        return isAbrupt(1, magnitude, STEP_DB_PER_SECOND * seconds)
                || isAbrupt(FALLING, magnitude, 2 * STEP_DB_PER_SECOND * FALLING * seconds);
    }

    /** Whether the last so many readings fell by more than the least, and all of a sudden. */
    private boolean isAbrupt(int readings, double magnitude, double leastDb) {
        int earlier = Math.min(readings, before.size() - readings);
        if (earlier < 1) {
            return false;
        }
        double from = before.last(readings - 1);
        double fallDb = db(from / magnitude);
        double beforeDb = db(before.last(readings - 1 + earlier) / from) * readings / earlier;
        return fallDb > Math.max(STEP_DB, leastDb) && fallDb > ABRUPT * beforeDb;
    }

    private void beginStep(long tNanos) {
        stepping = true;
        stepNanos = tNanos;
        levelBefore = before.median();
        movingBefore = !before.stands(MOVING_SHARE);
        after.clear();
    }

    private void settle(long tNanos, double magnitude) {
        double seconds = (tNanos - stepNanos) / 1e9;
        if (seconds < SETTLE_SECONDS) {
            return;
        }
        after.add(tNanos, magnitude);
        boolean enough = after.size() >= 5 && after.spannedNanos() > 0.25e9;
        if (certain) {
            if (enough || seconds > GIVE_UP_SECONDS) {
                finish(tNanos, OptionalDouble.of(together())); // a hand that turns on does not come to stand
            }
            return;
        }
        boolean changed = isMeasured() && Math.abs(db(after.median() / levelBefore)) > LEAST_CUT_DB && isCredible();
        if (enough && after.staysLevel(STANDING_SHARE) && (changed || seconds > GIVE_UP_SECONDS)) {
            finish(tNanos, changed ? OptionalDouble.of(likely()) : OptionalDouble.empty());
        } else if (seconds > GIVE_UP_SECONDS) {
            finish(tNanos, OptionalDouble.empty());
        }
    }

    /** A level of nothing, before or after, is no measure of a step. */
    private boolean isMeasured() {
        return levelBefore > 0 && after.median() > 0;
    }

    /** While an adjuster or the gang is turned the reading changes by itself: what goes the other way is no change that was asked for. */
    private boolean isCredible() {
        return !movingBefore || db(measured()) * db(factor) > 0;
    }

    /** By what the generator says and what the readings show. */
    private double together() {
        double saidDb = Decibels.of(factor);
        return isMeasured()
                ? LevelJump.between(before, after, meter::straightAboveRest)
                        .map(jump -> Decibels.ratio(jump.togetherWith(saidDb, meter.isLawKnown())))
                        .orElse(factor)
                : factor;
    }

    /** Of levels that stand their ratio; else by what a hand was asked to do, and what the readings show. */
    private double likely() {
        if (!isSloped(before) && !isSloped(after)) {
            return measured();
        }
        return LevelJump.between(before, after, meter::straightAboveRest)
                .map(jump -> Decibels.ratio(jump.madeByHand(db(factor))))
                .orElseGet(this::measured);
    }

    private boolean isSloped(RecentReadings readings) {
        return readings.line(meter::straightAboveRest).isSloped();
    }

    private double measured() {
        return meter.straightAboveRest(after.median()) / meter.straightAboveRest(levelBefore);
    }

    private void finish(long tNanos, OptionalDouble ratio) {
        stepping = false;
        certain = false;
        promptedNanos = Long.MIN_VALUE / 2;
        before.takeOver(after);
        if (ratio.isPresent()) {
            scale *= ratio.getAsDouble();
            listener.generatorChanged(tNanos, db(ratio.getAsDouble()));
        } else if (announced) {
            listener.generatorUnchanged(tNanos);
        }
        announced = false;
    }

    private void prompt(long tNanos, double above, double rest) {
        double magnitude = Math.abs(above);
        if (magnitude < PROMPT_SHARE * highVolts) {
            highSinceNanos = tNanos;
        }
        boolean due = tNanos - promptedNanos >= (isArmed(tNanos) ? REPEAT_NANOS : BETWEEN_PROMPTS_NANOS);
        if (tNanos - highSinceNanos > HIGH_NANOS && due) {
            promptedNanos = tNanos;
            factor = magnitude > 2 * highVolts ? 0.25 : 0.5;
            listener.cutGenerator(tNanos, factor, rest + factor * above);
        }
    }

    private static double db(double ratio) {
        return Decibels.of(Math.max(1e-9, ratio));
    }
}
