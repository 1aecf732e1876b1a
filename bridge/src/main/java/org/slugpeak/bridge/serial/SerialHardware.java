package org.slugpeak.bridge.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.concurrent.locks.ReentrantLock;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slugpeak.bridge.disk.PrivateFolder;
import org.slugpeak.bridge.instrument.LinkSettings;
import org.slugpeak.bridge.source.BadConfiguration;
import org.slugpeak.bridge.source.OpenPort;
import org.slugpeak.bridge.source.PortUnavailable;

/**
 * The only class that knows the serial library. Its native part frees what another thread still uses unless listing, opening
 * and closing exclude each other, so one lock stands round all three. Any thread may use it.
 */
final class SerialHardware {

    private static final Logger LOG = LoggerFactory.getLogger(SerialHardware.class);
    private static final ReentrantLock LOCK = new ReentrantLock();

    private static final String TEMPORARY_FOLDER = "java.io.tmpdir";
    private static final String HOME_FOLDER = "user.home";

    /** The library counts in steps of this size, and beyond 25 s wrongly. */
    private static final int READ_WAIT_MILLIS = 100;

    private SerialHardware() {}

    static List<PortInfo> list(StableNames names) throws PortUnavailable {
        LOCK.lock();
        try {
            List<PortInfo> found = new ArrayList<>();
            for (SerialPort port : Library.ports()) {
                String path = port.getSystemPortPath();
                found.add(new PortInfo(path, describe(port), names.of(path)));
            }
            return found;
        } catch (LinkageError e) {
            throw unusable(e);
        } finally {
            LOCK.unlock();
        }
    }

    static OpenPort open(String path, LinkSettings settings) throws PortUnavailable {
        LOCK.lock();
        try {
            SerialPort port = Library.port(path);
            configure(port, settings);
            if (!port.openPort(0)) {
                throw PortTrouble.explain(path, port.getLastErrorCode());
            }
            setLines(port, settings); // the system raises both while it opens
            LOG.info("opened {} at {} baud", path, settings.baud());
            return new Opened(port);
        } catch (SerialPortInvalidPortException e) {
            throw PortTrouble.explain(path, PortTrouble.NO_SUCH_PORT);
        } catch (LinkageError e) {
            throw unusable(e);
        } finally {
            LOCK.unlock();
        }
    }

    private static void configure(SerialPort port, LinkSettings settings) {
        int parity = switch (settings.parity()) {
            case NONE -> SerialPort.NO_PARITY;
            case EVEN -> SerialPort.EVEN_PARITY;
            case ODD -> SerialPort.ODD_PARITY;
        };
        int stopBits = settings.stopBits() == 1 ? SerialPort.ONE_STOP_BIT : SerialPort.TWO_STOP_BITS;
        port.setComPortParameters(settings.baud(), settings.dataBits(), stopBits, parity);
        port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
        port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, READ_WAIT_MILLIS, 0);
        if (!settings.resetOnOpen()) {
            port.clearDTR();
            port.clearRTS();
        }
        setLines(port, settings);
    }

    private static void setLines(SerialPort port, LinkSettings settings) {
        settings.dtr().ifPresent(on -> {
            boolean unused = on ? port.setDTR() : port.clearDTR();
        });
        settings.rts().ifPresent(on -> {
            boolean unused = on ? port.setRTS() : port.clearRTS();
        });
    }

    private static String describe(SerialPort port) {
        String name = Optional.ofNullable(port.getPortDescription()).orElse("");
        return name.isBlank() ? port.getDescriptivePortName() : name;
    }

    private static PortUnavailable unusable(LinkageError e) {
        return new PortUnavailable(
                "serial ports cannot be used here: the serial library does not load (" + e.getMessage()
                        + "); is there room in your cache folder, and is it allowed to hold programs?",
                e);
    }

    /** Loads the library on first use, from a folder that is the user's own; without one it is not loaded at all. */
    private static final class Library {

        private static final Optional<BadConfiguration> TROUBLE = load();

        private Library() {}

        static SerialPort[] ports() throws PortUnavailable {
            refuse();
            return SerialPort.getCommPorts();
        }

        static SerialPort port(String path) throws PortUnavailable {
            refuse();
            return SerialPort.getCommPort(path);
        }

        private static void refuse() throws PortUnavailable {
            if (TROUBLE.isPresent()) {
                throw new PortUnavailable(
                        "serial ports cannot be used: " + TROUBLE.get().getMessage(), TROUBLE.get());
            }
        }

        /** The library looks below two folders once, when its class is loaded, and has no setting of its own for either. */
        private static Optional<BadConfiguration> load() {
            try {
                Path folder = PrivateFolder.find();
                HangUp hangUp = HangUp.remembered(folder);
                String temporary = System.setProperty(TEMPORARY_FOLDER, folder.toString());
                String home = System.setProperty(HOME_FOLDER, folder.toString());
                try {
                    SerialPort.getVersion();
                } finally {
                    hangUp.putBack();
                    System.setProperty(TEMPORARY_FOLDER, temporary);
                    System.setProperty(HOME_FOLDER, home);
                }
                return Optional.empty();
            } catch (BadConfiguration e) {
                return Optional.of(e);
            }
        }
    }

    private static final class Opened implements OpenPort {

        /** At 9600 bits a second the farewell to a meter takes 15 ms; closing might throw the rest of it away. */
        private static final int DRAIN_LOOKS = 20;

        private static final long DRAIN_PAUSE_NANOS = TimeUnit.MILLISECONDS.toNanos(5);

        /**
         * Closing throws away what the far end has not taken yet, and the count of waiting bytes knows nothing of what adapters
         * hold. So last words get this long.
         */
        private static final long LAST_WORDS_NANOS = TimeUnit.MILLISECONDS.toNanos(250);

        private final SerialPort port;
        private volatile boolean unanswered;

        Opened(SerialPort port) {
            this.port = port;
        }

        @Override
        public int read(byte[] buffer) {
            int count = port.readBytes(buffer, buffer.length);
            if (count > 0) {
                unanswered = false;
            }
            return count;
        }

        private void drain() {
            for (int i = 0; i < DRAIN_LOOKS && port.bytesAwaitingWrite() > 0; i++) {
                LockSupport.parkNanos(DRAIN_PAUSE_NANOS);
            }
            if (unanswered) {
                LockSupport.parkNanos(LAST_WORDS_NANOS);
            }
        }

        @Override
        public void write(byte[] bytes) {
            unanswered = true;
            int done = 0;
            while (done < bytes.length) {
                int count = port.writeBytes(bytes, bytes.length - done, done);
                if (count <= 0) {
                    return;
                }
                done += count;
            }
        }

        @Override
        public void close() {
            drain();
            LOCK.lock();
            try {
                port.closePort();
            } finally {
                LOCK.unlock();
            }
        }
    }
}
