package org.slugpeak.bridge.sound;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slugpeak.bridge.time.Ticker;

/**
 * Reads a sound input in a thread of its own, because a read of it may wait for ever. Blocks of samples wait in a queue; when
 * the queue is full the thread waits too, and what the device then loses shows in its clock.
 */
final class LineReader implements AutoCloseable {

    private static final int BLOCKS = 64;
    private static final double BLOCK_SECONDS = 0.01;

    /** Some samples and when they came; no samples: the device is gone. It goes round and round. */
    static final class Block {

        private final byte[] bytes;
        private int length;
        private long arrivedNanos;

        private Block(int size) {
            this.bytes = new byte[size];
        }

        byte[] bytes() {
            return bytes;
        }

        int length() {
            return length;
        }

        long arrivedNanos() {
            return arrivedNanos;
        }
    }

    private final SoundLine line;
    private final Ticker ticker;
    private final BlockingQueue<Block> full = new ArrayBlockingQueue<>(BLOCKS);
    private final BlockingQueue<Block> empty = new ArrayBlockingQueue<>(BLOCKS);
    private final Thread thread;
    private volatile boolean closing;

    LineReader(SoundLine line, Ticker ticker) {
        this.line = line;
        this.ticker = ticker;
        int frames = Math.max(1, (int) (BLOCK_SECONDS * line.format().rateHz()));
        for (int i = 0; i < BLOCKS; i++) {
            empty.add(new Block(frames * line.format().frameBytes()));
        }
        this.thread = new Thread(this::run, "sound input");
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    SoundLine line() {
        return line;
    }

    /** The next block, or null if none came in time. */
    @Nullable
    Block next(long waitNanos) {
        try {
            return waitNanos > 0 ? full.poll(waitNanos, TimeUnit.NANOSECONDS) : full.poll();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return null;
        }
    }

    /** Gives a block back for reuse. */
    void done(Block block) {
        empty.add(block);
    }

    /** Does not wait: a device that died in the middle of a read may never let its line be closed. */
    @Override
    public void close() {
        closing = true;
        thread.interrupt();
        Thread closer = new Thread(line::close, "sound input closing");
        closer.setDaemon(true);
        closer.start();
    }

    private void run() {
        try {
            boolean there = true;
            while (there && !closing) {
                Block block = empty.take();
                there = line.read(block.bytes) == block.bytes.length;
                block.length = there ? block.bytes.length : 0;
                block.arrivedNanos = ticker.nowNanos();
                full.put(block);
            }
        } catch (InterruptedException e) {
            closing = true;
        }
    }
}
