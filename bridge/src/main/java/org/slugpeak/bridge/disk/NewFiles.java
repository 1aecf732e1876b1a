package org.slugpeak.bridge.disk;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Files that were not there before. Windows takes some names for devices, whatever stands behind their first point: what is written to
 * {@code con.jsonl} goes to the console and is lost. All methods may be called by any thread.
 */
public final class NewFiles {

    /** Microsoft, Naming Files, Paths, and Namespaces (from memory); the small figures one to three are superscripts. */
    private static final Pattern DEVICE =
            Pattern.compile("(?i)(con|prn|aux|nul|(com|lpt)[0-9\u00b9\u00b2\u00b3]|conin\\$|conout\\$) *(\\..*)?");

    private NewFiles() {}

    /**
     * Makes an empty file.
     *
     * @param file where nothing is yet
     * @throws IOException if something is there, or nothing can be made there; also for a name that is none here
     */
    public static void create(Path file) throws IOException {
        refuseDevices(file);
        Files.createFile(file);
    }

    /**
     * Refuses what the system would take for a device.
     *
     * @param file a place for a file
     * @throws FileSystemException for such a name
     */
    static void refuseDevices(Path file) throws FileSystemException {
        refuseDevices(file.toString(), System.getProperty("os.name", ""));
    }

    static void refuseDevices(String file, String system) throws FileSystemException {
        String name = file.substring(1 + Math.max(file.lastIndexOf('\\'), file.lastIndexOf('/')));
        boolean windows = system.toLowerCase(Locale.ROOT).startsWith("windows");
        if (windows && DEVICE.matcher(name).matches()) {
            throw new FileSystemException(file, null, "that is a device on Windows and no file: choose another name");
        }
    }
}
