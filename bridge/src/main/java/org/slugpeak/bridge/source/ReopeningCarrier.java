package org.slugpeak.bridge.source;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.core.session.LinkDetail;

/**
 * A line that may be lost and come back: unplugged, switched off, cut. A thread of its own reads, closes what has gone, and tries to
 * open it anew with growing pauses; the path is looked up afresh each time, so that a link by a stable name leads to the
 * device wherever it is now. One thread at a time calls it.
 */
public final class ReopeningCarrier implements Carrier {

    private static final Logger LOG = LoggerFactory.getLogger(ReopeningCarrier.class);

    private static final int CHUNK_BYTES = 512;
    private static final int CHUNKS_KEPT = 4096;
    private static final long FIRST_PAUSE_MILLIS = 100;
    private static final long LONGEST_PAUSE_MILLIS = 2_000;

    /** A read that waits returns nothing after a tenth of a second; a dead device returns nothing at once, for ever. */
    private static final long AT_ONCE_NANOS = TimeUnit.MILLISECONDS.toNanos(50);

    private static final int AT_ONCE_UNTIL_GONE = 20;
    /** A driver that hangs must not hold up the end of the session; the reader closes the port whenever it returns. */
    private static final int MOST_CLOSING_LOOKS = 30;

    private static final long CLOSING_LOOK_MILLIS = 100;

    private final String path;
    private final PortOpener opener;
    private final Ticker ticker;
    private final BlockingQueue<CarrierEvent> events = new ArrayBlockingQueue<>(CHUNKS_KEPT);
    private final CountDownLatch stop = new CountDownLatch(1);
    private final Object portLock = new Object();
    private final Thread reader;
    private Optional<OpenPort> port;

    private ReopeningCarrier(String path, PortOpener opener, OpenPort first, Ticker ticker) {
        this.path = path;
        this.opener = opener;
        this.ticker = ticker;
        this.port = Optional.of(first);
        this.reader = new Thread(() -> run(first), "reader of " + path);
        reader.setDaemon(true);
    }

    /**
     * Opens the line for the first time, in the caller's thread, and begins to read.
     *
     * @param path what the user calls it
     * @param opener opens it
     * @param ticker the clock of the events
     * @return the carrier; the caller closes it
     * @throws PortUnavailable where it does not open
     */
    public static ReopeningCarrier open(String path, PortOpener opener, Ticker ticker) throws PortUnavailable {
        ReopeningCarrier carrier = new ReopeningCarrier(path, opener, opener.open(), ticker);
        carrier.reader.start();
        return carrier;
    }

    @Override
    public String name() {
        return path;
    }

    @Override
    public Optional<CarrierEvent> await(long waitNanos) {
        try {
            return Optional.ofNullable(events.poll(waitNanos, TimeUnit.NANOSECONDS));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    @Override
    public void send(byte[] bytes) {
        synchronized (portLock) {
            port.ifPresent(open -> open.write(bytes));
        }
    }

    @Override
    public void close() {
        stop.countDown();
        boolean interrupted = Thread.interrupted();
        for (int i = 0; i < MOST_CLOSING_LOOKS && reader.isAlive(); i++) {
            try {
                reader.join(CLOSING_LOOK_MILLIS);
            } catch (InterruptedException e) {
                interrupted = true; // last words are still on their way to the instrument
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void run(OpenPort first) {
        Optional<OpenPort> open = Optional.of(first);
        while (open.isPresent()) {
            tell(new CarrierEvent.Opened(ticker.nowNanos()));
            readUntilGone(open.get());
            letGo(open.get());
            if (stopped()) {
                return;
            }
            LOG.info("lost {}", path);
            tell(new CarrierEvent.Lost(ticker.nowNanos(), LinkDetail.Cause.PULLED));
            open = openAgain();
        }
    }

    private void readUntilGone(OpenPort open) {
        byte[] buffer = new byte[CHUNK_BYTES];
        int atOnce = 0;
        while (!stopped() && atOnce <= AT_ONCE_UNTIL_GONE) {
            long beforeNanos = ticker.nowNanos();
            int count = open.read(buffer);
            long afterNanos = ticker.nowNanos();
            if (count < 0) {
                return;
            }
            atOnce = count == 0 && afterNanos - beforeNanos < AT_ONCE_NANOS ? atOnce + 1 : 0;
            if (count > 0) {
                tell(new CarrierEvent.Bytes(afterNanos, Arrays.copyOf(buffer, count)));
            }
        }
    }

    /** This thread is the one that read, so nobody reads when the port is closed; the lock keeps writers out. */
    private void letGo(OpenPort open) {
        synchronized (portLock) {
            port = Optional.empty();
            open.close();
        }
    }

    private Optional<OpenPort> openAgain() {
        long pauseMillis = FIRST_PAUSE_MILLIS;
        while (!pausedUntilStop(pauseMillis)) {
            try {
                OpenPort open = opener.open();
                synchronized (portLock) {
                    port = Optional.of(open);
                }
                return Optional.of(open);
            } catch (PortUnavailable e) {
                LOG.debug("{} is not back: {}", path, e.getMessage());
                pauseMillis = Math.min(2 * pauseMillis, LONGEST_PAUSE_MILLIS);
            }
        }
        return Optional.empty();
    }

    private void tell(CarrierEvent event) {
        try {
            boolean taken = false;
            while (!taken && !stopped()) {
                taken = events.offer(event, FIRST_PAUSE_MILLIS, TimeUnit.MILLISECONDS);
            }
        } catch (InterruptedException e) {
            LOG.debug("{} dropped: interrupted", event);
            Thread.currentThread().interrupt();
        }
    }

    private boolean pausedUntilStop(long pauseMillis) {
        try {
            return stop.await(pauseMillis, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    private boolean stopped() {
        return stop.getCount() == 0;
    }
}
