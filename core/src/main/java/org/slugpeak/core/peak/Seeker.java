package org.slugpeak.core.peak;

/** Hears what {@link Front} makes of the readings, block by block. */
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
}
