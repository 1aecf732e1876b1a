package org.slugpeak.cli.sessions;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32C;

/**
 * By what a log is known again. Immutable; any thread may use it.
 *
 * @param file its name below the folder, with slashes
 * @param bytes how long it was
 * @param modifiedMillis when it was changed last, milliseconds since 1970
 * @param hash of what is in it, see {@link #hash}; 0 until it was read
 */
record LogStamp(String file, long bytes, long modifiedMillis, long hash) {

    private static final int BUFFER_BYTES = 1 << 16;

    /** Whether nothing has touched it since. */
    boolean isAsIn(LogStamp other) {
        return bytes == other.bytes && modifiedMillis == other.modifiedMillis;
    }

    /** Whether only its date is another, as after a copy. */
    boolean saysTheSame(LogStamp other) {
        return bytes == other.bytes && hash == other.hash;
    }

    LogStamp withHash(long found) {
        return new LogStamp(file, bytes, modifiedMillis, found);
    }

    /** CRC-32C (RFC 3720, 12.1) of its first bytes, as many as the stamp has: it finds changes, not forgeries. */
    long hash(Path folder) throws IOException {
        CRC32C sum = new CRC32C();
        byte[] buffer = new byte[BUFFER_BYTES];
        try (InputStream in = Files.newInputStream(folder.resolve(file))) {
            long left = bytes;
            for (int read = 0; left > 0 && read >= 0; left -= read) {
                read = in.read(buffer, 0, (int) Math.min(buffer.length, left));
                if (read > 0) {
                    sum.update(buffer, 0, read);
                }
            }
        }
        return sum.getValue();
    }
}
