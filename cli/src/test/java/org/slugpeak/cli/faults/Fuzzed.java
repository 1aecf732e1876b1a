package org.slugpeak.cli.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * One way in for a fuzzer that is guided by coverage (profile {@code fuzz}); {@code faults.only} names it by the word of a row
 * {@code bytes-...} of the campaign. What is thrown beside the errors that are meant for a user is a finding.
 */
public final class Fuzzed {

    private static final Path FOLDER = folder();
    private static final MutatedBytes WAY_IN = wayIn(System.getProperty("faults.only", "bytes-csv"));

    private Fuzzed() {}

    /**
     * Called by the fuzzer.
     *
     * @param bytes what it thought of
     */
    public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
        WAY_IN.take(bytes, FOLDER);
    }

    private static MutatedBytes wayIn(String name) {
        try {
            List<Trial> all = MutatedBytes.all();
            return (MutatedBytes) all.stream()
                    .filter(each -> each.name().equals(name))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("slugpeak-fuzzed");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
