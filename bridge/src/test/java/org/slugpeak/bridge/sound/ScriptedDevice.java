package org.slugpeak.bridge.sound;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.slugpeak.bridge.source.PortUnavailable;
import org.slugpeak.bridge.time.Ticker;

/**
 * A sound input that does as told: {@code play} lets a read succeed and sets the clock forward by its length, {@code unplug}
 * makes it come back short, and an input that is not told anything waits.
 */
final class ScriptedDevice implements SoundLine.Device, Ticker {

    static final int RATE_HZ = 48_000;

    private final BlockingQueue<Integer> events = new LinkedBlockingQueue<>();
    private final AtomicLong nanos = new AtomicLong(1_000_000_000L);
    private final AtomicInteger opened = new AtomicInteger();
    private volatile boolean there = true;
    private int frame;

    /** Some tens of milliseconds of a 412 Hz tone of 0.25 FS; the device then stands still until told more. */
    void play(int blocks) {
        for (int i = 0; i < blocks; i++) {
            events.add(1);
        }
    }

    void unplug() {
        there = false;
        events.add(0);
    }

    void plugIn() {
        there = true;
    }

    void pass(long someNanos) {
        nanos.addAndGet(someNanos);
    }

    int opened() {
        return opened.get();
    }

    @Override
    public long nowNanos() {
        return nanos.get();
    }

    @Override
    public String name() {
        return "Scripted input";
    }

    @Override
    public SoundLine open() throws PortUnavailable {
        opened.incrementAndGet();
        if (!there) {
            throw new PortUnavailable("no sound input is called 'Scripted input'");
        }
        return new ScriptedLine();
    }

    private final class ScriptedLine implements SoundLine {

        @Override
        public SampleFormat format() {
            return new SampleFormat(RATE_HZ, 2, Encoding.SIGNED_16);
        }

        @Override
        public int read(byte[] into) {
            try {
                if (events.take() == 0) {
                    return 0;
                }
            } catch (InterruptedException e) {
                return 0;
            }
            for (int i = 0; i < into.length; i += 4) {
                int value = (int) Math.round(8192 * Math.sin(2 * Math.PI * 412 / RATE_HZ * frame++));
                into[i] = (byte) value;
                into[i + 1] = (byte) (value >> 8);
            }
            nanos.addAndGet(into.length / 4 * 1_000_000_000L / RATE_HZ);
            return into.length;
        }

        @Override
        public void close() {
            // Nothing is held.
        }
    }
}
