package org.slugpeak.core.peak;

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

    private static final double SHOWS = 5;
    /** Two movements in a row the same way are no noise when each exceeds so many sigma. */
    private static final double MOVES = 3;
    /** Nobody who goes on after so many words will listen to another. */
    private static final int WORDS = 3;
    /** Whoever has been told to turn round has done so by then, backlash included. */
    private static final double HEARD_NANOS = 1.2e9;
    /** Noise may hide how the level moves; by then a level that went on has passed through the longest means that measure its speed. */
    private static final double AT_REST_NANOS = 4e9;

    private static final double STILL_FALLING = Decibels.part(0.7);

    private final PeakListener listener;
    private final Orientation orientation;
    private long blocks;
    private boolean saidFlat;
    private boolean saidEnd;
    private long toldAtNanos;
    private double heardLevel = Double.NaN;
    private double restLevel = Double.NaN;
    private double saidSlower;
    private int words;

    Travel(PeakListener listener, Orientation orientation) {
        this.listener = listener;
        this.orientation = orientation;
    }

    void look(long tNanos, TurnTest test, Slope slope, Front front) {
        blocks++;
        double blockSeconds = front.pace.blockSeconds();
        if (!saidFlat && test.direction() == 0 && lasted(blocks, blockSeconds, FLAT_AFTER_SECONDS)) {
            saidFlat = true;
            listener.noPeak(tNanos, NoPeakReason.FLAT);
        }
        if (!saidEnd
                && test.direction() > 0
                && slope.perSecond() == 0
                && lasted(test.blocksSinceRise(), blockSeconds, STOOD_STILL_SECONDS)) {
            saidEnd = true;
            listener.noPeak(tNanos, NoPeakReason.END_OF_TRAVEL);
        }
        if (front.pace.blockSize() == 1 && orientation.seek() == Seek.PEAK) {
            watchSpeed(tNanos, front);
        }
    }

    private static boolean lasted(long blocks, double blockSeconds, double seconds) {
        return blocks >= ENOUGH_BLOCKS && blocks * blockSeconds >= seconds;
    }

    private void watchSpeed(long tNanos, Front front) {
        Pyramid readings = front.pyramid;
        if (!readings.has(0, 3)) {
            return;
        }
        double newer = readings.mean(0) - readings.mean(0, 1);
        double older = readings.mean(0, 1) - readings.mean(0, 2);
        double moved = Math.min(Math.abs(newer), Math.abs(older));
        double reading = Math.abs(readings.mean(0));
        boolean shows = (newer > 0) == (older > 0) && moved > MOVES * front.noise.white(0, reading);
        double factor = moved / (STEEPEST * HALF_WIDTHS_PER_READING * reading);
        if (shows && factor >= WORTH_SAYING * Math.max(1, saidSlower) && factor < Double.POSITIVE_INFINITY) {
            saidSlower = factor;
            listener.hint(tNanos, Hint.TURN_SLOWER, factor);
        }
    }

    /** The level fell before it ever rose. */
    void wrongWay(long tNanos, double fallDb) {
        told(tNanos);
        words++;
        listener.hint(tNanos, Hint.WRONG_WAY, fallDb);
    }

    /** Whether the hand was told to turn round, has had time to do so, and the level still goes on falling. */
    boolean turnsAway(long tNanos, TurnTest test, Smoother level, Slope slope) {
        long since = Elapsed.nanos(toldAtNanos, tNanos);
        if (test.direction() >= 0 || words >= WORDS || since < HEARD_NANOS) {
            return false;
        }
        if (Double.isNaN(heardLevel)) {
            heardLevel = level.value();
        }
        if (Double.isNaN(restLevel) && since >= AT_REST_NANOS) {
            restLevel = level.value();
        }
        return (isBelow(heardLevel, level) && slope.fallsNow()) || isBelow(restLevel, level);
    }

    private static boolean isBelow(double before, Smoother level) {
        return level.value() < before - STILL_FALLING * Math.abs(before) - SHOWS * level.sigma();
    }

    void passed(long tNanos) {
        words = 0;
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
    }
}
