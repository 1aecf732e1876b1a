package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** In the archive that brings its own Java a module's descriptor takes the place of the files in META-INF/services. */
class ImageModulesTest {

    private static final Path TREE =
            Path.of(System.getProperty("slugpeak.shared")).resolveSibling("");
    private static final Pattern PROVIDES = Pattern.compile("provides\\s+(\\S+)\\s+with\\s+([^;]+);");

    @ParameterizedTest
    @ValueSource(strings = {"bridge", "cli"})
    void theDescriptorProvidesWhatTheServiceFilesName(String module) throws IOException {
        TreeMap<String, Set<String>> described = new TreeMap<>();
        String descriptor = Files.readString(TREE.resolve("release/src/modules/" + module + ".java"));
        PROVIDES.matcher(descriptor)
                .results()
                .forEach(found -> described.put(
                        found.group(1), names(Arrays.stream(found.group(2).split(",")))));
        TreeMap<String, Set<String>> listed = new TreeMap<>();
        try (Stream<Path> files = Files.list(TREE.resolve(module + "/src/main/resources/META-INF/services"))) {
            for (Path file : files.toList()) {
                listed.put(file.getFileName().toString(), names(Files.readAllLines(file).stream()));
            }
        }
        assertEquals(listed, described);
    }

    private static Set<String> names(Stream<String> lines) {
        return lines.map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
