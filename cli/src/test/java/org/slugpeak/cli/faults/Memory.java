package org.slugpeak.cli.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** What a process holds in memory, as Linux tells it. */
final class Memory {

    private Memory() {}

    /** Resident now, kB; 0 for a process that has ended. */
    static long kilobytes(long pid) {
        Path status = Path.of("/proc", Long.toString(pid), "status");
        try (Stream<String> lines = Files.lines(status)) {
            return lines.filter(line -> line.startsWith("VmRSS:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                    .findFirst()
                    .orElse(0);
        } catch (IOException | UncheckedIOException ended) {
            return 0;
        }
    }
}
