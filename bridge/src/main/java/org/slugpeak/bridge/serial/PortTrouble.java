package org.slugpeak.bridge.serial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.Optional;
import java.util.regex.Pattern;
import org.slugpeak.bridge.source.PortUnavailable;

/**
 * Says why a port does not open and what to do about it. The numbers are those of errno on Linux (asm-generic/errno-base.h) and macOS
 * (sys/errno.h, from memory), and for ports with a name of Windows those of Windows (winerror.h, from memory). Stateless.
 */
final class PortTrouble {

    static final int NO_SUCH_PORT = 2;

    private static final int INPUT_OUTPUT_ERROR = 5;
    private static final int TRY_AGAIN = 11;
    private static final int PERMISSION_DENIED = 13;
    private static final int BUSY = 16;
    private static final int NOT_A_TERMINAL = 25;
    private static final int TRY_AGAIN_ON_MACOS = 35;

    /** A port that another program has open is one to which access is denied. */
    private static final int WINDOWS_ACCESS_DENIED = 5;

    private static final int WINDOWS_SHARING_VIOLATION = 32;
    private static final int WINDOWS_GENERAL_FAILURE = 31;
    private static final int WINDOWS_TIMED_OUT = 121;
    private static final int WINDOWS_NOT_CONNECTED = 1167;

    /** HOST:PORT, where a host with colons stands in square brackets. */
    private static final Pattern ON_THE_NETWORK = Pattern.compile("([^:/\\\\\\[\\]\\s]+|\\[[^\\]\\s]+\\]):\\d{1,5}");

    private static final Pattern OF_WINDOWS = Pattern.compile("(\\\\\\\\\\.\\\\)?(?i)com\\d+");

    private static final String SEE_PORTS = "see 'slugpeak ports' for what is there";

    private PortTrouble() {}

    static PortUnavailable explain(String path, int code) {
        if (OF_WINDOWS.matcher(path).matches()) {
            return new PortUnavailable(onWindows(path, code));
        }
        Optional<Path> file = file(path);
        boolean exists = file.filter(Files::exists).isPresent();
        if (!exists && ON_THE_NETWORK.matcher(path).matches()) {
            return new PortUnavailable("there is no port " + path + ": if it is on the network, write tcp:" + path);
        }
        if (file.filter(Files::isDirectory).isPresent()) {
            return new PortUnavailable(path + " is a folder: name a port or a file");
        }
        if (file.filter(Files::isRegularFile).isPresent()) {
            return new PortUnavailable(path
                    + " is a file of an unknown kind: readings end in .csv, session logs in .jsonl, audio in .wav");
        }
        if (exists && code == NOT_A_TERMINAL) {
            return new PortUnavailable(path + " is no serial port: " + SEE_PORTS);
        }
        if (exists && (code == PERMISSION_DENIED || !Files.isReadable(file.get()) || !Files.isWritable(file.get()))) {
            return new PortUnavailable(notYours(path, group(file.get())));
        }
        return new PortUnavailable(
                switch (code) {
                    case NO_SUCH_PORT -> exists ? busy(path) : missing(path);
                    case TRY_AGAIN, TRY_AGAIN_ON_MACOS, BUSY -> busy(path);
                    case INPUT_OUTPUT_ERROR -> silent(path, "input/output error");
                    default -> exists || file.isEmpty() ? unknown(path, code) : missing(path);
                });
    }

    private static String onWindows(String path, int code) {
        return switch (code) {
            case NO_SUCH_PORT -> missing(path);
            case WINDOWS_ACCESS_DENIED, WINDOWS_SHARING_VIOLATION -> busy(path);
            case WINDOWS_GENERAL_FAILURE -> silent(path, "a device attached to the system is not functioning");
            case WINDOWS_TIMED_OUT -> silent(path, "timed out");
            case WINDOWS_NOT_CONNECTED -> silent(path, "not connected");
            default -> unknown(path, code);
        };
    }

    private static String silent(String path, String why) {
        return path + " does not answer (" + why + "): pull the plug and put it in again";
    }

    private static String unknown(String path, int code) {
        return path + " does not open (system error " + code + "): pull the plug, put it in again, and " + SEE_PORTS;
    }

    private static String missing(String path) {
        return "there is no port " + path + ": plug the instrument in, and " + SEE_PORTS;
    }

    private static String busy(String path) {
        return path + " is in use: close the other program that uses it, then try again";
    }

    private static String notYours(String path, Optional<String> group) {
        return group.map(name -> "you may not use " + path + ": it belongs to group '" + name
                        + "'; run 'sudo usermod -aG " + name + " $USER', then log out and in again")
                .orElse("you may not use " + path + ": ask for permission to read and write it");
    }

    private static Optional<String> group(Path file) {
        try {
            return Optional.of(Files.readAttributes(file, PosixFileAttributes.class)
                    .group()
                    .getName());
        } catch (IOException | UnsupportedOperationException e) {
            return Optional.empty();
        }
    }

    private static Optional<Path> file(String path) {
        try {
            return path.startsWith("/") ? Optional.of(Path.of(path)) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
