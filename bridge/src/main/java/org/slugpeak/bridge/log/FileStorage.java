package org.slugpeak.bridge.log;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.slugpeak.bridge.disk.Folders;
import org.slugpeak.bridge.disk.NewFiles;

/**
 * A file. A random access file and not a channel, because a channel is closed by an interrupt of the thread that writes to it.
 * For threads see {@link Storage}.
 */
final class FileStorage implements Storage {

    private final Path path;
    private final RandomAccessFile file;

    private FileStorage(Path path, RandomAccessFile file) {
        this.path = path;
        this.file = file;
    }

    /** Makes a file that was not there before, and sees to it that its name survives a power cut. */
    static FileStorage create(Path path) throws IOException {
        NewFiles.create(path);
        Folders.keepNameOf(path);
        return new FileStorage(path, new RandomAccessFile(path.toFile(), "rw"));
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        file.write(bytes, from, count);
    }

    @Override
    public long length() throws IOException {
        return file.length();
    }

    @Override
    public void truncate(long length) throws IOException {
        file.setLength(length);
        file.seek(length);
    }

    @Override
    public void force() throws IOException {
        file.getFD().sync();
    }

    @Override
    public void close() throws IOException {
        boolean empty = file.length() == 0;
        file.close();
        if (empty) {
            Files.deleteIfExists(path);
        }
    }
}
