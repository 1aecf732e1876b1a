package org.slugpeak.bridge.tcp;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slugpeak.bridge.source.OpenPort;
import org.slugpeak.bridge.source.PortUnavailable;

/** An open connection. One thread reads; another may write. */
final class TcpPort implements OpenPort {

    private static final Logger LOG = LoggerFactory.getLogger(TcpPort.class);

    /** On the bench's own network an instrument answers within milliseconds; one that starts may take seconds. */
    private static final int CONNECT_MILLIS = 3_000;

    private static final int READ_WAIT_MILLIS = 100;

    private static final int DRAINED_BYTES = 4096;
    private static final int DRAINS = 8;

    private final Socket socket;
    private volatile boolean broken;

    private TcpPort(Socket socket) {
        this.socket = socket;
    }

    /** Tries each address that the name has, in the order of the system. */
    static TcpPort open(TcpAddress address) throws PortUnavailable {
        String where = address.host() + " port " + address.port();
        IOException last = new IOException("no address");
        try {
            for (InetAddress each : InetAddress.getAllByName(address.host())) {
                try {
                    return connect(new InetSocketAddress(each, address.port()));
                } catch (IOException e) {
                    LOG.debug("{} at {}: {}", where, each, e.getMessage());
                    last = e;
                }
            }
        } catch (UnknownHostException e) {
            throw new PortUnavailable(
                    "no machine is called '" + address.host() + "': check the name, or write the instrument's number"
                            + " from its network menu",
                    e);
        }
        throw explain(where, last);
    }

    private static TcpPort connect(InetSocketAddress address) throws IOException {
        Socket socket = new Socket();
        try {
            socket.connect(address, CONNECT_MILLIS);
            socket.setTcpNoDelay(true);
            socket.setKeepAlive(true);
            socket.setSoTimeout(READ_WAIT_MILLIS);
            return new TcpPort(socket);
        } catch (IOException e) {
            socket.close();
            throw e;
        }
    }

    private static PortUnavailable explain(String where, IOException e) {
        if (e instanceof SocketTimeoutException) {
            return new PortUnavailable(
                    where + " does not answer: is it switched on and on the same network, is the number right?", e);
        }
        if (e instanceof ConnectException) {
            return new PortUnavailable(
                    "nothing listens at " + where + ": is the raw socket (SCPI) switched on in the instrument's network"
                            + " menu, and is this its port? Usual: " + TcpAddress.USUAL_PORT,
                    e);
        }
        return new PortUnavailable(where + " cannot be reached (" + e.getMessage() + "): is the network up?", e);
    }

    @Override
    public int read(byte[] buffer) {
        if (broken) {
            return GONE;
        }
        try {
            return socket.getInputStream().read(buffer);
        } catch (SocketTimeoutException nothing) {
            return 0;
        } catch (IOException e) {
            return GONE;
        }
    }

    @Override
    public void write(byte[] bytes) {
        try {
            socket.getOutputStream().write(bytes);
        } catch (IOException e) {
            broken = true; // the reader notices, and says that the instrument has gone
        }
    }

    /** A connection that is closed with bytes unread is cut off, and the last words with it. */
    private void drain() throws IOException {
        try {
            byte[] unread = new byte[DRAINED_BYTES];
            for (int i = 0; i < DRAINS && socket.getInputStream().read(unread) >= 0; i++) {}
        } catch (SocketTimeoutException nothing) {
            LOG.debug("{}: nothing more came", socket);
        }
    }

    @Override
    public void close() {
        try {
            if (!broken) {
                socket.shutdownOutput();
                drain();
            }
            socket.close();
        } catch (IOException e) {
            LOG.debug("closing {}: {}", socket, e.getMessage());
        }
    }
}
