package org.slugpeak.cli.cue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.slugpeak.bridge.disk.NewFiles;

/**
 * A WAV file of one channel and 16 bits that is valid at any time, also when the program is killed: the sizes in its header
 * (RIFF, IBM and Microsoft, Multimedia Programming Interface and Data Specifications 1.0) are brought up to date every
 * second of sound. One thread at a time.
 */
final class WavFile implements AutoCloseable {

    /** The sizes in the header are 32 bits wide and many readers take them as signed. */
    static final long MOST_BYTES = Integer.MAX_VALUE - 44L;

    private static final int HEADER_BYTES = 44;
    private static final int BYTES_PER_FRAME = 2;
    private static final int LARGEST_SAMPLE = 32767;

    private final RandomAccessFile file;
    private final int framesPerSecond;
    private long written;
    private long saved;

    WavFile(Path path, int framesPerSecond) throws IOException {
        this.framesPerSecond = framesPerSecond;
        NewFiles.create(path); // whatever is there may be somebody's only recording
        file = new RandomAccessFile(path.toFile(), "rw");
        writeHeader();
    }

    /** Appends samples from -1 to 1. */
    void write(float[] samples, int count) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(count * BYTES_PER_FRAME).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < count; i++) {
            bytes.putShort((short) Math.round(samples[i] * LARGEST_SAMPLE));
        }
        file.write(bytes.array());
        written += bytes.capacity();
        if (written - saved >= (long) framesPerSecond * BYTES_PER_FRAME) {
            writeHeader();
        }
    }

    boolean isFull() {
        return written > MOST_BYTES - (long) framesPerSecond * BYTES_PER_FRAME;
    }

    private void writeHeader() throws IOException {
        ByteBuffer header = ByteBuffer.allocate(HEADER_BYTES).order(ByteOrder.LITTLE_ENDIAN);
        header.put(ascii("RIFF")).putInt((int) (HEADER_BYTES - 8 + written)).put(ascii("WAVEfmt "));
        header.putInt(16).putShort((short) 1).putShort((short) 1).putInt(framesPerSecond);
        header.putInt(framesPerSecond * BYTES_PER_FRAME)
                .putShort((short) BYTES_PER_FRAME)
                .putShort((short) 16);
        header.put(ascii("data")).putInt((int) written);
        file.seek(0);
        file.write(header.array());
        file.seek(HEADER_BYTES + written);
        saved = written;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    @Override
    public void close() throws IOException {
        writeHeader();
        file.close();
    }
}
