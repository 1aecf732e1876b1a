package org.slugpeak.bridge.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Folders and power cuts. All methods may be called by any thread. */
public final class Folders {

    private Folders() {}

    /**
     * The folder in which a file is.
     *
     * @param file need not be there
     * @return its folder; the root for the root itself
     */
    public static Path of(Path file) {
        Path whole = file.toAbsolutePath();
        Path parent = whole.getParent();
        return parent == null ? whole : parent;
    }

    /**
     * Sees to it that the name of a file survives a power cut. The file itself must be forced before.
     *
     * @param file that was made, linked or renamed
     */
    public static void keepNameOf(Path file) {
        try (FileChannel channel = FileChannel.open(of(file), StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Not every system lets a folder be opened or forced; those that do not, keep names safe by themselves.
        }
    }
}
