package org.slugpeak.bridge.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A socket on a bench: a path that stays, behind which an instrument can be plugged in and pulled out. Each plugging makes a
 * new pseudo-terminal under another name, as an adapter that comes back under another number does. One thread at a time.
 *
 * <pre>{@code
 * try (BenchPort port = BenchPort.in(temporaryFolder)) {
 *     port.plug(ScpiResponder.meter());
 *     // start the tool with --from port.path()
 *     port.unplug();
 *     port.plug(ScpiResponder.meter());
 * }
 * }</pre>
 */
public final class BenchPort implements AutoCloseable {

    private final Path link;
    private Optional<Plugged> plugged = Optional.empty();

    private BenchPort(Path link) {
        this.link = link;
    }

    /**
     * A socket with nothing in it.
     *
     * @param folder where the path is made; the test's own
     * @return the socket
     */
    public static BenchPort in(Path folder) {
        return new BenchPort(folder.resolve("bench-port"));
    }

    /**
     * What the tool is given as its source.
     *
     * @return a path that exists while something is plugged in
     */
    public String path() {
        return link.toString();
    }

    /**
     * Plugs an instrument in.
     *
     * @param instrument it may have been plugged in before
     */
    public void plug(BenchInstrument instrument) {
        unplug();
        Plugged next = new Plugged(PseudoTerminal.open(), instrument);
        try {
            Files.createSymbolicLink(link, Path.of(next.terminal.path()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        plugged = Optional.of(next);
        next.start();
    }

    /** Pulls the plug; without one it does nothing. */
    public void unplug() {
        try {
            Files.deleteIfExists(link);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        plugged.ifPresent(Plugged::pull);
        plugged = Optional.empty();
    }

    @Override
    public void close() {
        unplug();
    }

    private static final class Plugged implements Runnable {

        private static final int LOOK_MILLIS = 5;

        private final PseudoTerminal terminal;
        private final BenchInstrument instrument;
        private final Thread thread;
        private volatile boolean pulled;

        Plugged(PseudoTerminal terminal, BenchInstrument instrument) {
            this.terminal = terminal;
            this.instrument = instrument;
            this.thread = new Thread(this, "bench instrument on " + terminal.path());
            thread.setDaemon(true);
        }

        void start() {
            instrument.plugged(terminal::write);
            thread.start();
        }

        @Override
        public void run() {
            boolean open = false;
            while (!pulled) {
                boolean now = terminal.isOpenedByHost();
                if (now && !open) {
                    instrument.opened();
                }
                open = now;
                byte[] bytes = terminal.read(LOOK_MILLIS);
                if (bytes.length > 0) {
                    instrument.received(bytes);
                }
            }
        }

        void pull() {
            pulled = true;
            terminal.breakOff();
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            instrument.unplugged();
            terminal.close();
        }
    }
}
