package org.slugpeak.bridge.serial;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The links that Linux keeps for each device by its maker and serial number, so that a path stays with the instrument and not
 * with the order of plugging in. Immutable; any thread may use it.
 */
final class StableNames {

    private static final Path LINKS = Path.of("/dev/serial/by-id");

    private final Map<Path, String> byTarget;

    private StableNames(Map<Path, String> byTarget) {
        this.byTarget = byTarget;
    }

    static StableNames ofSystem() {
        return in(LINKS);
    }

    static StableNames in(Path folder) {
        Map<Path, String> byTarget = new TreeMap<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> links = Files.newDirectoryStream(folder)) {
                for (Path link : links) {
                    if (Files.exists(link)) {
                        byTarget.put(link.toRealPath(), link.toString());
                    }
                }
            } catch (IOException e) {
                return new StableNames(Map.of()); // unplugged while we looked: the plain paths still serve
            }
        }
        return new StableNames(byTarget);
    }

    Optional<String> of(String path) {
        return Optional.ofNullable(byTarget.get(Path.of(path)));
    }
}
