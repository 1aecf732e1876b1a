package org.slugpeak.core.peak;

/**
 * What is hunted for: says when it was passed, when the level is back at it, when it has stayed there. A {@link Hunt} asks, block by
 * block, and keeps the order of things.
 */
interface HuntGoal {

    /** What the newest block shows. */
    enum Seen {
        /** Nothing that ends a stretch of the travel. */
        NOTHING,
        /** The signal is away, or nobody knows yet what has become of it: no stage may go on. */
        NO_SIGNAL,
        /** Another stretch begins towards what is sought. */
        TOWARDS,
        /** The level has begun to go away from what is sought. */
        AWAY,
        /** What was known of the goal holds no more: the search begins again. */
        LOST
    }

    /** What has come of a stay at the goal. */
    enum Stay {
        WAITS,
        HELD,
        /** Too far from it, for too long. */
        SHORT
    }

    /** Takes the newest block. */
    Seen look(long tNanos);

    /** Nothing is passed yet, and the block showed nothing. */
    void search(long tNanos);

    /**
     * The level goes away.
     *
     * @param before whether it was passed before, and the level was not back yet
     * @return whether that is a pass
     */
    boolean passes(long tNanos, boolean before);

    /** It is passed, and the level is not back yet. */
    void past(long tNanos);

    /** The level goes towards the goal so soon after the pass that no hand has turned: nothing was passed. */
    void takeBack(long tNanos);

    /** Whether the pass before was none, since the level has gone beyond it or is nothing but noise; says so if it is worth a word. */
    boolean isBeyond(long tNanos, boolean held);

    /** Whether the level is back at the goal. */
    boolean isBack(long tNanos);

    /** The level is back. */
    void returned(long tNanos);

    /** What comes of a stay that began then. */
    Stay stay(long tNanos, long sinceNanos);

    /** The stay is long enough. */
    void held(long tNanos);

    /** The blocks before do not join those that follow. */
    void gap();

    /** Nobody knows which way the level has gone meanwhile, after a pass. */
    void interrupted();

    /** The level has jumped faster than any adjuster moves; it had been {@code before}. */
    void jump(long tNanos, double before);

    /** Forgets the present adjuster. */
    void restart();

    double best();

    double bestSigma();

    long bestAtNanos();

    double belowBestDb();

    /** 1 the value grows, -1 it shrinks, 0 neither shows. */
    int trend();

    double smoothed();
}
