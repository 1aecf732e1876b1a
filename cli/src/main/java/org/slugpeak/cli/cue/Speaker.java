package org.slugpeak.cli.cue;

import java.util.Optional;

/** An open way to a person's ear. Written by one thread; may be closed by another, which wakes the writer. */
interface Speaker extends AutoCloseable {

    /** Hz. */
    int framesPerSecond();

    /** Most frames to write at once, small enough for the delay that was asked for. */
    int blockFrames();

    /**
     * Plays samples, waiting until there is room for them.
     *
     * @return false once the device is gone
     */
    boolean write(float[] samples, int count);

    @Override
    void close();

    /** Opens a speaker, as often as it is asked to. */
    @FunctionalInterface
    interface Opener {

        /** Empty where there is none now. */
        Optional<Speaker> open();
    }
}
