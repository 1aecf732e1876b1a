package org.slugpeak.cli.page;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import org.slugpeak.bridge.time.Ticker;

/**
 * The browsers that look on. Each has a thread of its own, which writes the newest sight, waits until there is a newer one, and so skips whatever
 * came while it wrote: nothing is queued, and whoever shows a sight waits for nobody. A browser that takes nothing for
 * {@value #PATIENCE_SECONDS} s is let go; it comes again by itself. Any thread may use it.
 */
final class Screens implements AutoCloseable {

    /** Twice as many as are promised, since a browser that went away without a word is noticed late. */
    static final int MOST = 16;

    static final int PATIENCE_SECONDS = 10;

    /** A browser that hears nothing for a few of these knows that the connection is lost. */
    private static final long BEAT_MILLIS = 1000;

    /** No display shows more pictures than 60 a second. */
    private static final long BETWEEN_MILLIS = 16;

    private static final String BEAT = "event: beat\ndata: 1\n\n";

    private final Supplier<String> past;
    private final Ticker ticker;
    private final Set<Looker> lookers = ConcurrentHashMap.newKeySet();
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition changed = lock.newCondition();
    private PageState newest;
    private boolean closed;

    /** Nobody looks on yet. */
    Screens(PageState first, Supplier<String> past, Ticker ticker) {
        newest = first;
        this.past = past;
        this.ticker = ticker;
    }

    /** From now on this is seen. Never waits for a browser. */
    void show(PageState sight) {
        lock.lock();
        try {
            newest = sight;
            changed.signalAll();
        } finally {
            lock.unlock();
        }
    }

    /**
     * One more looks on.
     *
     * @param out written to until it fails, then closed
     * @return false where there are too many already; it was not touched then
     */
    boolean join(OutputStream out) {
        Looker looker = new Looker(out);
        synchronized (lookers) {
            if (lookers.size() >= MOST) {
                return false;
            }
            lookers.add(looker);
        }
        looker.thread.start();
        return true;
    }

    int count() {
        return lookers.size();
    }

    /** Lets go of those that have taken nothing for too long; to be called every now and then. */
    void dropStuck() {
        long now = ticker.nowNanos();
        lookers.stream()
                .filter(looker ->
                        looker.writing && now - looker.sinceNanos > TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS))
                .forEach(looker -> looker.thread.interrupt());
    }

    /** What was shown last is still sent to those that take it. */
    @Override
    public void close() {
        lock.lock();
        try {
            closed = true;
            changed.signalAll();
        } finally {
            lock.unlock();
        }
        long untilNanos = ticker.nowNanos() + TimeUnit.MILLISECONDS.toNanos(BEAT_MILLIS);
        for (Looker looker : lookers) {
            looker.end(TimeUnit.NANOSECONDS.toMillis(untilNanos - ticker.nowNanos()));
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** One browser. */
    private final class Looker {

        private final OutputStream out;
        private final Thread thread = new Thread(this::run, "second-screen");
        private volatile boolean writing;
        private volatile long sinceNanos;

        Looker(OutputStream out) {
            this.out = out;
            thread.setDaemon(true);
        }

        private void run() {
            try (out) {
                write(bytes("retry: 1000\n\n" + past.get()));
                look();
            } catch (IOException | InterruptedException gone) {
                // The browser comes again if somebody still looks at it.
                return;
            } finally {
                lookers.remove(this);
            }
        }

        private void look() throws IOException, InterruptedException {
            PageState seen = awaitNewer(-1);
            write(bytes(PageEvents.work(seen.work()) + PageEvents.state(seen)));
            while (!isOver(seen)) {
                PageState next = awaitNewer(seen.number());
                String work = next.work().equals(seen.work()) ? "" : PageEvents.work(next.work());
                write(bytes(next.number() == seen.number() ? BEAT : work + PageEvents.state(next)));
                seen = next;
                pause();
            }
        }

        private void write(byte[] text) throws IOException {
            sinceNanos = ticker.nowNanos();
            writing = true;
            out.write(text);
            out.flush();
            writing = false;
        }

        private void end(long patienceMillis) {
            try {
                thread.join(Math.max(1, patienceMillis));
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            thread.interrupt();
        }
    }

    private PageState awaitNewer(long number) throws InterruptedException {
        lock.lock();
        try {
            long leftNanos = TimeUnit.MILLISECONDS.toNanos(BEAT_MILLIS);
            while (newest.number() <= number && !closed && leftNanos > 0) {
                leftNanos = changed.awaitNanos(leftNanos);
            }
            return newest;
        } finally {
            lock.unlock();
        }
    }

    private boolean isOver(PageState seen) {
        lock.lock();
        try {
            return closed && newest.number() == seen.number();
        } finally {
            lock.unlock();
        }
    }

    /** A faster meter would only be shown between two pictures. */
    private void pause() throws InterruptedException {
        lock.lock();
        try {
            long leftNanos = TimeUnit.MILLISECONDS.toNanos(BETWEEN_MILLIS);
            while (!closed && leftNanos > 0) {
                leftNanos = changed.awaitNanos(leftNanos);
            }
        } finally {
            lock.unlock();
        }
    }
}
