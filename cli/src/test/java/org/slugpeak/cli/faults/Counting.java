package org.slugpeak.cli.faults;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slugpeak.cli.tool.PackagedTool;

/** Reads the JSON lines of a tool, or its plain ones, and remembers the last reading that it has shown. Any thread may ask. */
final class Counting {

    private static final Pattern READING =
            Pattern.compile("\"type\":\"reading\".*?\"value\":([0-9.E]+)|^ *[0-9.]+ s  ([0-9.]+)  ");

    private final AtomicLong shown = new AtomicLong();
    private final Thread reader;

    private Counting(PackagedTool tool) {
        reader = new Thread(() -> read(tool), "counting");
        reader.setDaemon(true);
        reader.start();
    }

    static Counting of(PackagedTool tool) {
        return new Counting(tool);
    }

    /** The last one, when the tool has ended and all it wrote was read. */
    long last() throws InterruptedException {
        reader.join();
        return shown.get();
    }

    long soFar() {
        return shown.get();
    }

    private void read(PackagedTool tool) {
        try {
            for (Optional<String> line = tool.line(); line.isPresent(); line = tool.line()) {
                Matcher reading = READING.matcher(line.get());
                if (reading.find()) {
                    shown.set(
                            (long) Double.parseDouble(reading.group(1) == null ? reading.group(2) : reading.group(1)));
                }
            }
        } catch (IOException gone) {
            // Killed: what was read counts.
            return;
        }
    }
}
