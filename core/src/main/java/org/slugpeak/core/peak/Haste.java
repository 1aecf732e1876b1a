package org.slugpeak.core.peak;

/**
 * Whether the hand comes back to the best too fast to stop there, and how long it needs for that.
 *
 * <p><b>Definition.</b> An overshoot is a pass within {@value #OVERSHOT_SECONDS} s of a return. A hand needs
 * {@value Hunt#REACTION_SECONDS} s to stop, and as much more for each time that it overshot although it came slowly enough for
 * that. It hurries where so long before the best more is missing than a return may miss. Whoever has overshot once and hurries is
 * told to turn slower, before the best, once on each way back.
 *
 * <p><b>Algorithm.</b> What is missing a given time before a top goes as the square of the speed: so the factor is the root of
 * what is missing over what may be.
 *
 * <p><b>Threads.</b> One at a time.
 */
final class Haste {

    /** Stopping a second late is a slow hand; after a longer time it is another movement. */
    private static final double OVERSHOT_SECONDS = 1.5;
    /** Slower by less than this is not worth a word. */
    private static final double WORTH_SAYING = 1.3;
    /** Nobody needs longer than three times the usual. */
    private static final int MOST_REACTIONS = 3;

    private final PeakListener listener;
    private int reactions = 1;
    private boolean hasOvershot;
    private boolean hurries;
    private boolean told;
    private boolean returned;
    private long returnedAtNanos;

    Haste(PeakListener listener) {
        this.listener = listener;
    }

    /** How long before the best the hand has to hear of it. */
    double leadSeconds() {
        return reactions * Hunt.REACTION_SECONDS;
    }

    /** The best has been passed. */
    void passed(long tNanos) {
        if (returned && Elapsed.seconds(returnedAtNanos, tNanos) < OVERSHOT_SECONDS) {
            hasOvershot = true;
            reactions = hurries ? reactions : Math.min(reactions + 1, MOST_REACTIONS);
        }
        begin();
    }

    private void begin() {
        returned = false;
        hurries = false;
        told = false;
    }

    /** The hand will be at the best before it can stop, and so much is missing of what may be. */
    void comesSoon(long tNanos, double missing, double allowed) {
        double factor = Math.sqrt(missing / allowed);
        hurries |= factor >= WORTH_SAYING;
        if (hurries && hasOvershot && !told) {
            told = true;
            listener.hint(tNanos, Hint.TURN_SLOWER, factor);
        }
    }

    void returned(long tNanos) {
        returned = true;
        returnedAtNanos = tNanos;
    }

    void restart() {
        reactions = 1;
        hasOvershot = false;
        begin();
    }
}
