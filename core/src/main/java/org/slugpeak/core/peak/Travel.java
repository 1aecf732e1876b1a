package org.slugpeak.core.peak;

import java.util.function.DoubleSupplier;
import org.slugpeak.core.decibel.Decibels;

/** Watches how the search before a pass goes: the wrong way, nowhere, against the end stop, too fast for the meter. */
final class Travel {

    private static final double FLAT_AFTER_SECONDS = 30;
    private static final double STOOD_STILL_SECONDS = 6;
    private static final int ENOUGH_BLOCKS = 20;
    /** Ten readings across the top of one decibel's depth: there the position changes by 1/10 of the half-width per reading. */
    private static final double HALF_WIDTHS_PER_READING = 0.1;
    /** Nowhere is a resonance steeper than half its own level per half-width. */
    private static final double STEEPEST = 0.5;
    /** Slower by less than this is not worth a word. */
    private static final double WORTH_SAYING = 1.3;

    /** Nobody who goes on after so many words will listen to another. */
    private static final int WORDS = 3;

    private static final double SHOWS = 5;
    /** Two movements in a row the same way are no noise when each exceeds so many sigma. */
    private static final double MOVES = 3;
    /** Whoever has been told to turn round has done so by then, backlash included. */
    private static final double HEARD_NANOS = 1.2e9;
    /** Noise may hide how the level moves; by then a level that went on has passed through the longest means that measure its speed. */
    private static final double AT_REST_NANOS = 4e9;

    private static final double STILL_FALLING = Decibels.lost(0.7);

    /** A level that stands out of its noise by less than this from nothing is none. */
    private static final double STANDS_OUT = 3;

    private final Sight sight;
    private final PeakListener listener;
    private final Orientation orientation;
    private long blocks;
    private boolean saidFlat;
    private boolean saidEnd;
    private long toldAtNanos;
    private double heardLevel = Double.NaN;
    private double restLevel = Double.NaN;
    private double saidSlower;
    /** One word for each turn of the hand: another waits until the fall was seen to pause. */
    private boolean mayTell = true;

    private long fellNanos;
    /** The word waits for the last of the readings that were set aside: they come all at once. */
    private boolean isDue;

    private int words;

    Travel(Sight sight, PeakListener listener, Orientation orientation) {
        this.sight = sight;
        this.listener = listener;
        this.orientation = orientation;
    }

    void look(long tNanos, TurnDetector turns) {
        blocks++;
        double blockSeconds = sight.blockSeconds();
        if (!saidFlat && turns.direction() == 0 && lasted(blocks, blockSeconds, FLAT_AFTER_SECONDS)) {
            saidFlat = true;
            tellFlat(tNanos);
        }
        if (!saidEnd
                && turns.direction() > 0
                && sight.slope.perSecond() == 0
                && lasted(turns.blocksSinceRise(), blockSeconds, STOOD_STILL_SECONDS)) {
            saidEnd = true;
            listener.noPeak(tNanos, NoPeakReason.END_OF_TRAVEL);
        }
        if (sight.front.pace.blockSize() == 1 && orientation.seek().seeksStrongest()) {
            watchSpeed(tNanos);
        }
    }

    /** There is nothing but noise, and nothing that could be said of the adjuster. */
    void lookInNoise(long tNanos) {
        blocks++;
        if (!saidFlat && lasted(blocks, sight.blockSeconds(), FLAT_AFTER_SECONDS)) {
            saidFlat = true;
            listener.hint(tNanos, Hint.SIGNAL_GONE, 0);
        }
    }

    /** Where nothing is read nothing can be said of the adjuster. */
    private void tellFlat(long tNanos) {
        if (Math.abs(sight.level.value()) <= STANDS_OUT * sight.level.sigma()) {
            listener.hint(tNanos, Hint.SIGNAL_GONE, 0);
        } else {
            listener.noPeak(tNanos, NoPeakReason.FLAT);
        }
    }

    private static boolean lasted(long blocks, double blockSeconds, double seconds) {
        return blocks >= ENOUGH_BLOCKS && blocks * blockSeconds >= seconds;
    }

    private void watchSpeed(long tNanos) {
        Pyramid readings = sight.front.pyramid;
        if (!readings.has(0, 3)) {
            return;
        }
        double newer = readings.mean(0) - readings.mean(0, 1);
        double older = readings.mean(0, 1) - readings.mean(0, 2);
        double moved = Math.min(Math.abs(newer), Math.abs(older));
        double reading = Math.abs(readings.mean(0));
        boolean shows = (newer > 0) == (older > 0) && moved > MOVES * sight.front.noise.white(0, reading);
        double factor = moved / (STEEPEST * HALF_WIDTHS_PER_READING * reading);
        if (shows && factor >= WORTH_SAYING * Math.max(1, saidSlower) && factor < Double.POSITIVE_INFINITY) {
            saidSlower = factor;
            listener.hint(tNanos, Hint.TURN_SLOWER, factor);
        }
    }

    /** The level fell before it ever rose, or goes on falling; not while it rises. */
    void wrongWay(long tNanos, DoubleSupplier fallDb) {
        isDue = sight.front.isBehind();
        if (isDue || !mayTell || words >= WORDS || sight.slope.perSecond() > 0) {
            return;
        }
        mayTell = false;
        fellNanos = tNanos;
        words++;
        told(tNanos);
        listener.hint(tNanos, Hint.WRONG_WAY, fallDb.getAsDouble());
    }

    /** The hand was told to turn round and has had time to do so: a level that still goes on falling goes the wrong way. */
    void lookAway(long tNanos, TurnDetector turns, DoubleSupplier fallDb) {
        if (sight.slope.perSecond() < 0) {
            fellNanos = tNanos;
        }
        if (isDue) {
            wrongWay(tNanos, fallDb);
        }
        mayTell |= sight.slope.perSecond() > 0 || Elapsed.nanos(fellNanos, tNanos) >= HEARD_NANOS;
        long since = Elapsed.nanos(toldAtNanos, tNanos);
        if (turns.direction() >= 0 || !mayTell || since < HEARD_NANOS) {
            return;
        }
        if (Double.isNaN(heardLevel)) {
            heardLevel = sight.level.value();
        }
        if (Double.isNaN(restLevel) && since >= AT_REST_NANOS) {
            restLevel = sight.level.value();
        }
        if ((isBelow(heardLevel) && sight.slope.fallsNow()) || isBelow(restLevel)) {
            wrongWay(tNanos, fallDb);
        }
    }

    private boolean isBelow(double before) {
        Smoother level = sight.level;
        return level.value() < before - STILL_FALLING * Math.abs(before) - SHOWS * level.sigma();
    }

    /** What comes next need not follow on what came before. */
    void gap() {
        blocks = 0;
    }

    /** Something was told that makes a hand turn round. */
    void passed(long tNanos) {
        words = 0;
        mayTell = true;
        saidEnd = false;
        told(tNanos);
    }

    private void told(long tNanos) {
        toldAtNanos = tNanos;
        heardLevel = Double.NaN;
        restLevel = Double.NaN;
    }

    void restart() {
        blocks = 0;
        saidFlat = false;
        saidEnd = false;
        saidSlower = 0;
        words = 0;
        mayTell = true;
        isDue = false;
    }
}
