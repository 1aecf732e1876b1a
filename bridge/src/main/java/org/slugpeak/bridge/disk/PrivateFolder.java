package org.slugpeak.bridge.disk;

import com.sun.security.auth.module.UnixSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.slugpeak.bridge.source.BadConfiguration;

/**
 * A folder that only this user can write, for the native parts of libraries: left to themselves they unpack them to the shared
 * temporary folder and load whatever lies there. Nothing is loaded from a folder that somebody else could write, and none is made.
 * Stateless.
 */
public final class PrivateFolder {

    private static final int OTHERS_WRITE = 0002;
    private static final int GROUP_WRITES = 0020;
    private static final int ONLY_OWNERS_DELETE = 01000;

    /** Those whose files nobody but the administrator can change: root, and root of another name space (user_namespaces(7)). */
    private static final int ROOT = 0;

    private static final int ROOT_ELSEWHERE = 65534;

    private PrivateFolder() {}

    /**
     * Finds the folder, or makes it.
     *
     * @return it is there, and nobody else can write it or put another in its place
     * @throws BadConfiguration where there is none; one line that says what to do
     */
    public static Path find() throws BadConfiguration {
        String cache = Optional.ofNullable(System.getenv("XDG_CACHE_HOME"))
                .filter(each -> !each.isEmpty())
                .orElse(System.getProperty("user.home") + "/.cache");
        return find(Path.of(cache).toAbsolutePath().resolve("slugpeak").resolve("native"));
    }

    static Path find(Path folder) throws BadConfiguration {
        try {
            if (!Files.getFileStore(existing(folder)).supportsFileAttributeView("posix")) {
                return Files.createDirectories(folder);
            }
            Files.createDirectories(
                    folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
            Path real = folder.toRealPath();
            refuseWritable(real);
            return real;
        } catch (IOException | SecurityException e) {
            throw new BadConfiguration(
                    "no folder of your own for programs: " + folder + " cannot be made (" + e.getMessage()
                            + "); set XDG_CACHE_HOME to a folder that you can write and others cannot",
                    e);
        }
    }

    private static Path existing(Path folder) {
        Path at = folder;
        while (!Files.exists(at) && at.getParent() != null) {
            at = at.getParent();
        }
        return at;
    }

    /** Whoever can write a folder above can put another in the place of this one. */
    private static void refuseWritable(Path folder) throws IOException, BadConfiguration {
        int me = (int) new UnixSystem().getUid();
        if (owner(folder) != me || (mode(folder) & (OTHERS_WRITE | GROUP_WRITES)) != 0) {
            throw unsafe(folder);
        }
        for (Path at = folder.getParent(); at != null; at = at.getParent()) {
            int owner = owner(at);
            boolean trusted = owner == me || owner == ROOT || owner == ROOT_ELSEWHERE;
            if (!trusted || (isWrittenByOthers(at) && (mode(at) & ONLY_OWNERS_DELETE) == 0)) {
                throw unsafe(at);
            }
        }
    }

    /** Many systems give each user a group of his own name, with nobody else in it. */
    private static boolean isWrittenByOthers(Path folder) throws IOException {
        boolean ownGroup = Files.getAttribute(folder, "unix:gid").equals(owner(folder));
        return (mode(folder) & (ownGroup ? OTHERS_WRITE : OTHERS_WRITE | GROUP_WRITES)) != 0;
    }

    private static int owner(Path folder) throws IOException {
        return (int) Files.getAttribute(folder, "unix:uid");
    }

    private static int mode(Path folder) throws IOException {
        return (int) Files.getAttribute(folder, "unix:mode");
    }

    private static BadConfiguration unsafe(Path folder) {
        return new BadConfiguration("no folder of your own for programs: others may write " + folder
                + "; take that right away (chmod go-w), or set XDG_CACHE_HOME to a folder that only you can write");
    }
}
