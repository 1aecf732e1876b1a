package org.slugpeak.bridge.file;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import org.slugpeak.bridge.time.Ticker;

/**
 * Bytes of a stream whose reads may block for ever. A daemon thread of its own reads and notes when bytes arrived; two blocks
 * go to and fro between it and the one thread that calls the methods.
 */
final class PumpedFeed implements ByteFeed {

    private static final int BLOCKS = 2;
    private static final int BLOCK_SIZE = 1 << 16;

    private final Opener opener;
    private final Ticker ticker;
    private final BlockingQueue<Block> filled = new ArrayBlockingQueue<>(BLOCKS);
    private final BlockingQueue<Block> empty = new ArrayBlockingQueue<>(BLOCKS);

    private volatile boolean closed;
    private Block current = new Block();
    private int taken;
    private boolean ended;

    /** Opens the stream in the thread that may wait for it. */
    @FunctionalInterface
    interface Opener {
        InputStream open() throws IOException;
    }

    PumpedFeed(Opener opener, Ticker ticker) {
        this.opener = opener;
        this.ticker = ticker;
        empty.add(new Block());
        Thread pump = new Thread(this::pump, "slugpeak-input");
        pump.setDaemon(true);
        pump.start();
    }

    @Override
    public int read(byte[] into, int at, int room, long waitNanos) throws IOException {
        if (taken == current.size && !ended && !next(waitNanos)) {
            return 0;
        }
        if (current.failure.isPresent()) {
            throw current.failure.get();
        }
        ended = ended || current.size == ENDED;
        if (ended) {
            return ENDED;
        }
        int count = Math.min(room, current.size - taken);
        System.arraycopy(current.bytes, taken, into, at, count);
        taken += count;
        return count;
    }

    @Override
    public long arrivalNanos() {
        return current.arrivalNanos;
    }

    /** Lets the thread end when its present read returns; a blocked read of standard input cannot be ended from outside. */
    @Override
    public void close() {
        closed = true;
        empty.offer(new Block());
    }

    private boolean next(long waitNanos) {
        try {
            Block block = waitNanos > 0 ? filled.poll(waitNanos, TimeUnit.NANOSECONDS) : filled.poll();
            if (block == null) {
                return false;
            }
            empty.offer(current);
            current = block;
            taken = 0;
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private void pump() {
        try {
            Optional<InputStream> in = Optional.empty();
            boolean more = true;
            while (more && !closed) {
                Block block = empty.take();
                in = fill(block, in);
                more = in.isPresent();
                filled.put(block);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Gives the stream to read on; empty at its end. */
    private Optional<InputStream> fill(Block block, Optional<InputStream> opened) {
        Optional<InputStream> in = opened;
        try {
            in = Optional.of(opened.isPresent() ? opened.get() : opener.open());
            block.size = in.get().read(block.bytes);
        } catch (IOException e) {
            block.failure = Optional.of(e);
            block.size = ENDED;
        }
        block.arrivalNanos = ticker.nowNanos();
        return block.size >= 0 ? in : Optional.empty();
    }

    /** Handed from thread to thread through the queues, which order what each wrote. */
    private static final class Block {
        private final byte[] bytes = new byte[BLOCK_SIZE];
        private int size;
        private long arrivalNanos;
        private Optional<IOException> failure = Optional.empty();
    }
}
