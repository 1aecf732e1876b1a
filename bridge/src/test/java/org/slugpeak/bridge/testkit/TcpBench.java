package org.slugpeak.bridge.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Arrays;
import java.util.Optional;

/** An instrument at a network port of this machine. Its own thread serves one connection after the other. */
public final class TcpBench implements AutoCloseable {

    private final ServerSocket listening;
    private final BenchInstrument instrument;
    private volatile Optional<Socket> connection = Optional.empty();

    private TcpBench(ServerSocket listening, BenchInstrument instrument) {
        this.listening = listening;
        this.instrument = instrument;
        Thread server = new Thread(this::serve, "tcp bench");
        server.setDaemon(true);
        server.start();
    }

    /**
     * Opens a port that is free.
     *
     * @param instrument what stands behind it
     * @return the bench
     */
    public static TcpBench of(BenchInstrument instrument) {
        return at(0, instrument);
    }

    /**
     * Opens a given port, as an instrument does that was switched on again.
     *
     * @param port its number; 0 for a free one
     * @param instrument what stands behind it
     * @return the bench
     */
    public static TcpBench at(int port, BenchInstrument instrument) {
        try {
            ServerSocket socket = new ServerSocket();
            socket.setReuseAddress(true);
            socket.bind(new java.net.InetSocketAddress(InetAddress.getLoopbackAddress(), port));
            return new TcpBench(socket, instrument);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Its port.
     *
     * @return 1 to 65535
     */
    public int port() {
        return listening.getLocalPort();
    }

    @Override
    public void close() {
        try {
            listening.close();
            if (connection.isPresent()) {
                connection.get().close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void serve() {
        try {
            while (true) {
                serve(listening.accept());
            }
        } catch (IOException closed) {
            // The bench was cleared.
        }
    }

    private void serve(Socket socket) {
        connection = Optional.of(socket);
        try (socket) {
            instrument.plugged(bytes -> {
                try {
                    socket.getOutputStream().write(bytes);
                } catch (IOException gone) {
                    // The host has left: nobody hears it.
                }
            });
            byte[] buffer = new byte[512];
            for (int count = socket.getInputStream().read(buffer);
                    count >= 0;
                    count = socket.getInputStream().read(buffer)) {
                instrument.received(Arrays.copyOf(buffer, count));
            }
        } catch (IOException closed) {
            // The bench was cleared, or the host has left.
        } finally {
            instrument.unplugged();
        }
    }
}
