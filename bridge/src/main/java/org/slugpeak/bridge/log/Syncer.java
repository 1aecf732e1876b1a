package org.slugpeak.bridge.log;

import java.io.Closeable;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Forces a storage to the disk from a thread of its own, so that a slow disk never holds up a reading. The thread is never
 * interrupted. Any thread may call the methods.
 */
final class Syncer implements Closeable {

    /** A power cut loses what was written in this time and in the time that the disk takes. */
    private static final long PERIOD_MILLIS = 500;

    private final Storage storage;
    private final ScheduledExecutorService thread;
    private final ScheduledFuture<?> beat;
    private final AtomicReference<Optional<IOException>> failure = new AtomicReference<>(Optional.empty());

    private volatile boolean dirty;

    Syncer(Storage storage) {
        this.storage = storage;
        this.thread = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread made = new Thread(task, "slugpeak-log");
            made.setDaemon(true);
            return made;
        });
        this.beat = thread.scheduleWithFixedDelay(this::force, PERIOD_MILLIS, PERIOD_MILLIS, TimeUnit.MILLISECONDS);
    }

    /** Something was written: it is forced within the period. */
    void written() {
        dirty = true;
    }

    /** What was written so far is forced as soon as the thread is free. */
    void hurry() {
        thread.execute(this::force);
    }

    /** Takes the last failure away. */
    Optional<IOException> pollFailure() {
        return failure.getAndSet(Optional.empty());
    }

    /** Waits for the thread to end, then forces what is left in the calling thread. */
    @Override
    public void close() {
        beat.cancel(false);
        thread.shutdown();
        boolean interrupted = false;
        boolean ended = false;
        while (!ended) {
            try {
                ended = thread.awaitTermination(1, TimeUnit.MINUTES);
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        force();
    }

    private void force() {
        if (!dirty) {
            return;
        }
        dirty = false;
        try {
            storage.force();
        } catch (IOException e) {
            dirty = true;
            failure.set(Optional.of(e));
        }
    }
}
