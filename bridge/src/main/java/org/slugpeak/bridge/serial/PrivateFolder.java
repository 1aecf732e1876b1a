package org.slugpeak.bridge.serial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/**
 * A folder that only this user can write, for the serial library's native part: left to itself the library unpacks it to the
 * shared temporary folder with write permission for everybody, and loads whatever it finds there. Stateless.
 */
final class PrivateFolder {

    private PrivateFolder() {}

    static Optional<Path> create() {
        String cache = Optional.ofNullable(System.getenv("XDG_CACHE_HOME"))
                .filter(each -> !each.isEmpty())
                .orElse(System.getProperty("user.home") + "/.cache");
        Path folder = Path.of(cache, "slugpeak", "native");
        try {
            Files.createDirectories(folder);
            if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
                Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
                String owner = Files.readAttributes(folder, PosixFileAttributes.class)
                        .owner()
                        .getName();
                return owner.equals(System.getProperty("user.name")) ? Optional.of(folder) : Optional.empty();
            }
            return Optional.of(folder);
        } catch (IOException e) {
            return Optional.empty(); // no home to write to: the library's own choice must do
        }
    }
}
