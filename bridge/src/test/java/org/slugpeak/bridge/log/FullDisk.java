package org.slugpeak.bridge.log;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** A disk in memory that has so much room and no more, and behaves as Linux does: first a short write, then an error. */
final class FullDisk implements Storage {

    private byte[] content = new byte[0];
    private int room;
    private boolean canTruncate = true;
    private boolean canForce = true;
    private int forces;
    private int writes;

    FullDisk(int room) {
        this.room = room;
    }

    synchronized void setRoom(int bytes) {
        room = bytes;
    }

    void refuseTruncation() {
        canTruncate = false;
    }

    synchronized void refuseForce() {
        canForce = false;
    }

    synchronized int forces() {
        return forces;
    }

    int writes() {
        return writes;
    }

    synchronized String text() {
        return new String(content, StandardCharsets.UTF_8);
    }

    List<String> lines() {
        return text().lines().toList();
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int count) throws IOException {
        writes++;
        int taken = Math.min(count, Math.max(0, room - content.length));
        if (taken > 0) {
            content = Arrays.copyOf(content, content.length + taken);
            System.arraycopy(bytes, from, content, content.length - taken, taken);
        }
        if (taken < count) {
            throw new IOException("No space left on device");
        }
    }

    @Override
    public synchronized long length() {
        return content.length;
    }

    @Override
    public synchronized void truncate(long length) throws IOException {
        if (!canTruncate) {
            throw new IOException("Input/output error");
        }
        content = Arrays.copyOf(content, (int) length);
    }

    @Override
    public synchronized void force() throws IOException {
        forces++;
        notifyAll();
        if (!canForce) {
            throw new IOException("Input/output error");
        }
    }

    /** Waits, without a limit of its own, until so many forces were asked for. */
    synchronized void awaitForces(int count) throws InterruptedException {
        while (forces < count) {
            wait();
        }
    }

    @Override
    public void close() {}
}
