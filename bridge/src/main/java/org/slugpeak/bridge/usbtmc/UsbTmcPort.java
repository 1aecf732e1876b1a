package org.slugpeak.bridge.usbtmc;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slugpeak.bridge.source.OpenPort;
import org.slugpeak.bridge.source.PortUnavailable;

/**
 * An open USBTMC device. A read asks the instrument for its answer, and where none is due the instrument reports an error; so it is
 * read only after a question, once for each (USB Test and Measurement Class, subclass USB488: a message goes in with one transfer
 * and out with one). One thread reads; another may write.
 */
final class UsbTmcPort implements OpenPort {

    private static final Logger LOG = LoggerFactory.getLogger(UsbTmcPort.class);

    private static final long READ_WAIT_MILLIS = 100;

    private final RandomAccessFile device;
    private final Path path;
    private final Semaphore questions = new Semaphore(0);

    private UsbTmcPort(RandomAccessFile device, Path path) {
        this.device = device;
        this.path = path;
    }

    static UsbTmcPort open(String address) throws PortUnavailable {
        Path path = Path.of(address);
        if (Files.notExists(path)) { // opening to write would make a file of that name
            throw new PortUnavailable("there is no " + address
                    + ": plug the instrument in and switch it on; if it does not appear, load the driver with"
                    + " 'sudo modprobe usbtmc'");
        }
        try {
            return new UsbTmcPort(new RandomAccessFile(address, "rw"), path);
        } catch (FileNotFoundException e) {
            throw new PortUnavailable(
                    "you may not use " + address + ": as root, add a udev rule for SUBSYSTEM==\"usbmisc\","
                            + " KERNEL==\"usbtmc*\" with TAG+=\"uaccess\", and plug the instrument in again",
                    e);
        }
    }

    @Override
    public int read(byte[] buffer) {
        try {
            if (!questions.tryAcquire(READ_WAIT_MILLIS, TimeUnit.MILLISECONDS)) {
                return Files.exists(path) ? 0 : GONE;
            }
            return message(buffer);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return GONE;
        }
    }

    /** One message, with a line end whether the instrument sent one or not. */
    private int message(byte[] buffer) {
        try {
            int count = device.read(buffer, 0, buffer.length - 1);
            if (count < 0) {
                return GONE;
            }
            if (count == buffer.length - 1) {
                questions.release(); // the rest of a long one
            } else if (count > 0 && buffer[count - 1] != '\n') {
                buffer[count++] = '\n';
            }
            return count;
        } catch (IOException e) {
            LOG.debug("{} gave no answer: {}", path, e.getMessage());
            boolean timeOut =
                    String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("timed out");
            return timeOut && Files.exists(path) ? 0 : GONE;
        }
    }

    @Override
    public void write(byte[] bytes) {
        try {
            device.write(bytes);
            for (byte each : bytes) {
                if (each == '?') {
                    questions.release();
                    return;
                }
            }
        } catch (IOException e) {
            LOG.debug("{} took no message: {}", path, e.getMessage());
        }
    }

    @Override
    public void close() {
        try {
            device.close();
        } catch (IOException e) {
            LOG.debug("closing {}: {}", path, e.getMessage());
        }
    }
}
