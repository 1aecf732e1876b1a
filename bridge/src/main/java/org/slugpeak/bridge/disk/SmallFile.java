package org.slugpeak.bridge.disk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Texts that a person writes by hand: plans, descriptions, lists of points. All methods may be called by any thread. */
public final class SmallFile {

    /** A hundred times what the longest plan that comes with the program has. */
    public static final int MOST_BYTES = 1_000_000;

    private SmallFile() {}

    /**
     * Reads the whole file.
     *
     * @param file any; a stream that never ends is given up at {@link #MOST_BYTES}
     * @return its text
     * @throws IOException where it is not there, cannot be read, is too large or no UTF-8; the message says which
     */
    public static String read(Path file) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        }
        if (bytes.length > MOST_BYTES) {
            throw new IOException("it has more than " + MOST_BYTES + " bytes");
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new IOException("it is no text in UTF-8", e);
        }
    }
}
