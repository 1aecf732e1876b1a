package org.slugpeak.cli.display;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** What the user has asked for and nobody has seen to yet. Any thread may put and take. */
public final class Keys {

    private final LinkedBlockingQueue<KeyAction> waiting = new LinkedBlockingQueue<>();

    /** No keys yet. */
    public Keys() {}

    /**
     * Adds a wish.
     *
     * @param action what is asked for
     */
    public void put(KeyAction action) {
        waiting.add(action);
    }

    /**
     * Takes the oldest wish; never waits.
     *
     * @return empty where there is none
     */
    public Optional<KeyAction> poll() {
        return Optional.ofNullable(waiting.poll());
    }

    /**
     * Takes the oldest wish, waiting for one if need be.
     *
     * @param atMost how long to wait
     * @return empty if none came
     * @throws InterruptedException if the thread is interrupted while it waits
     */
    public Optional<KeyAction> await(Duration atMost) throws InterruptedException {
        return Optional.ofNullable(waiting.poll(atMost.toNanos(), TimeUnit.NANOSECONDS));
    }
}
