package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The project's own text, for the rules that no class file shows. */
final class Sources {

    static final Path ROOT =
            Path.of(System.getProperty("slugpeak.shared")).toAbsolutePath().getParent();

    private static final int FEWEST = 10;

    private Sources() {}

    /** What the shipped classes of a module are made of; never nearly empty, so that no rule holds of nothing. */
    static List<Path> of(String module) {
        Path folder = ROOT.resolve(module).resolve("src/main/java");
        try (Stream<Path> walk = Files.walk(folder)) {
            List<Path> files =
                    walk.filter(path -> path.toString().endsWith(".java")).toList();
            assertTrue(files.size() > FEWEST, "only " + files.size() + " files in " + folder);
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Path> all() {
        return Stream.of("core", "bridge", "cli")
                .flatMap(each -> of(each).stream())
                .toList();
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where a pattern is met, as file and what was found. */
    static List<String> met(List<Path> files, Pattern pattern) {
        return files.stream()
                .flatMap(file -> pattern.matcher(text(file))
                        .results()
                        .map(match -> ROOT.relativize(file) + ": " + match.group()))
                .toList();
    }
}
