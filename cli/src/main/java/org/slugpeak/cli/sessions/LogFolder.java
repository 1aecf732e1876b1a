package org.slugpeak.cli.sessions;

import java.io.File;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;
import org.slugpeak.bridge.source.BadInput;

/** The folder where a user keeps logs, with the folders in it. Links are not followed. Stateless. */
final class LogFolder {

    private static final String LOG = ".jsonl";

    private LogFolder() {}

    /** Every file that is called like a log, by its name below the folder; none has been read. */
    static Map<String, LogStamp> list(Path folder) throws BadInput {
        if (!Files.isDirectory(folder)) {
            throw new BadInput("there is no folder " + folder + ": name the one where the logs are with --folder");
        }
        Map<String, LogStamp> found = new TreeMap<>();
        try {
            Files.walkFileTree(folder, new Collecting(folder, found));
        } catch (IOException e) {
            throw new BadInput("cannot look into " + folder + " (" + e.getMessage() + "): check its permissions", e);
        }
        return found;
    }

    /** Passes over what may not be looked into. */
    private static final class Collecting extends SimpleFileVisitor<Path> {

        private final Path folder;
        private final int above;
        private final Map<String, LogStamp> found;

        private Collecting(Path folder, Map<String, LogStamp> found) {
            this.folder = folder;
            this.above = folder.resolve("x").toString().length() - 1;
            this.found = found;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            String whole = file.toString();
            if (attributes.isRegularFile() && whole.endsWith(LOG)) {
                String name = whole.substring(above).replace(File.separatorChar, '/');
                found.put(
                        name,
                        new LogStamp(
                                name,
                                attributes.size(),
                                attributes.lastModifiedTime().toMillis(),
                                0));
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
            if (file.equals(folder)) {
                throw e;
            }
            return FileVisitResult.CONTINUE;
        }
    }
}
