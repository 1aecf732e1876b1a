package org.slugpeak.bridge.testkit;

import com.sun.jna.LastErrorException;
import com.sun.jna.Memory;
import com.sun.jna.Native;
import com.sun.jna.NativeLong;
import com.sun.jna.Pointer;
import java.util.Arrays;

/**
 * A pseudo-terminal pair: the program under test opens {@link #path} as a serial port, the test holds the instrument's end.
 * {@link #close} is what pulling the plug looks like. Linux only. One thread reads; another may write; close it when neither
 * does.
 */
public final class PseudoTerminal implements AutoCloseable {

    private static final int NAME_LENGTH = 64;
    private static final int TERMIOS_LENGTH = 256;
    private static final int CHUNK = 4096;
    private static final int EVENTS_OFFSET = 4;
    private static final int HAPPENED_OFFSET = 6;
    private static final int POLLFD_LENGTH = 8;
    private static final int LOOK_MILLIS = 5;

    private final int master;
    private final String path;
    private boolean closed;
    private volatile boolean brokenOff;

    private PseudoTerminal(int master, String path) {
        this.master = master;
        this.path = path;
    }

    /**
     * A new pair. The instrument's end does not echo, and nobody has opened the other.
     *
     * @return the pair
     */
    public static PseudoTerminal open() {
        int master = LibC.INSTANCE.posix_openpt(LibC.O_RDWR | LibC.O_NOCTTY | LibC.O_NONBLOCK);
        LibC.INSTANCE.grantpt(master);
        LibC.INSTANCE.unlockpt(master);
        byte[] name = new byte[NAME_LENGTH];
        LibC.INSTANCE.ptsname_r(master, name, new NativeLong(NAME_LENGTH));
        PseudoTerminal pair = new PseudoTerminal(master, Native.toString(name));
        pair.makeRaw();
        return pair;
    }

    /**
     * What the program under test opens.
     *
     * @return a path below {@code /dev/pts}
     */
    public String path() {
        return path;
    }

    /**
     * Whether a program holds the port open now.
     *
     * @return false after it has closed it
     */
    public boolean isOpenedByHost() {
        return (poll(LibC.POLLIN, 0) & LibC.POLLHUP) == 0;
    }

    /**
     * What the host has sent.
     *
     * @param waitMillis how long to wait for it
     * @return empty where nothing came or nobody holds the port open
     */
    public byte[] read(int waitMillis) {
        int happened = poll(LibC.POLLIN, waitMillis);
        if ((happened & LibC.POLLIN) == 0) {
            if ((happened & LibC.POLLHUP) != 0) {
                pause(waitMillis);
            }
            return new byte[0];
        }
        byte[] buffer = new byte[CHUNK];
        try {
            int count =
                    LibC.INSTANCE.read(master, buffer, new NativeLong(CHUNK)).intValue();
            return Arrays.copyOf(buffer, Math.max(0, count));
        } catch (LastErrorException e) {
            return new byte[0]; // the host closed the port between the two calls
        }
    }

    /**
     * Sends to the host, and waits for as long as it takes no more.
     *
     * @param bytes as they are; those that nobody has taken when {@link #breakOff} is called are lost
     */
    public void write(byte[] bytes) {
        int done = 0;
        try (Memory memory = new Memory(Math.max(1, bytes.length))) {
            memory.write(0, bytes, 0, bytes.length);
            while (done < bytes.length && !brokenOff) {
                if ((poll(LibC.POLLOUT, LOOK_MILLIS) & LibC.POLLOUT) != 0) {
                    done += some(memory.share(done), bytes.length - done);
                }
            }
        }
    }

    private int some(Pointer bytes, int count) {
        try {
            return LibC.INSTANCE.write(master, bytes, new NativeLong(count)).intValue();
        } catch (LastErrorException e) {
            if (e.getErrorCode() == LibC.EAGAIN) {
                return 0;
            }
            throw e;
        }
    }

    /** From now on nothing more is sent. Any thread may call it. */
    public void breakOff() {
        brokenOff = true;
    }

    /** Pulls the plug. Safe to call twice. */
    @Override
    public void close() {
        if (!closed) {
            closed = true;
            LibC.INSTANCE.close(master);
        }
    }

    /** Waits without looking at anything. */
    static void pause(int millis) {
        LibC.INSTANCE.poll(Pointer.NULL, new NativeLong(0), millis);
    }

    private int poll(short events, int waitMillis) {
        try (Memory descriptor = new Memory(POLLFD_LENGTH)) {
            descriptor.setInt(0, master);
            descriptor.setShort(EVENTS_OFFSET, events);
            descriptor.setShort(HAPPENED_OFFSET, (short) 0);
            LibC.INSTANCE.poll(descriptor, new NativeLong(1), waitMillis);
            return descriptor.getShort(HAPPENED_OFFSET);
        }
    }

    private void makeRaw() {
        int slave = LibC.INSTANCE.open(path, LibC.O_RDWR | LibC.O_NOCTTY);
        try (Memory settings = new Memory(TERMIOS_LENGTH)) {
            LibC.INSTANCE.tcgetattr(slave, settings);
            LibC.INSTANCE.cfmakeraw(settings);
            LibC.INSTANCE.tcsetattr(slave, LibC.TCSANOW, settings);
        }
        LibC.INSTANCE.close(slave);
    }
}
