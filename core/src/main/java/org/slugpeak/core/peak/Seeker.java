package org.slugpeak.core.peak;

/** What is made of conditioned readings: a peak or dip hunt, or a zero hunt. Values are oriented as {@link Front} feeds them. */
interface Seeker {

    /** A new block has been taken. */
    void block(long tNanos);

    /** The blocks before do not join those that follow. */
    void gap();

    /** The stream was interrupted: nobody knows which way the level has gone meanwhile. */
    void interrupted();

    /** The level has jumped faster than any adjuster moves; it had been {@code before}. */
    void jump(long tNanos, double before);

    /** Forgets the present adjuster. */
    void restart();

    double smoothed();

    double best();

    double bestSigma();

    long bestAtNanos();

    double belowBestDb();

    /** 1 the value grows, -1 it shrinks, 0 neither shows. */
    int trend();
}
