package org.slugpeak.bridge.sound;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalDouble;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.ReadingSource.Progress;

/** A WAV file, some milliseconds a pass; the time is that of its samples. */
final class WavCarrier implements SampleCarrier {

    private static final int FRAMES_A_PASS = 960;

    private final String name;
    private final RandomAccessFile file;
    private final WavHeader header;
    private final byte[] bytes;
    private long left;
    private boolean begun;

    private WavCarrier(String name, RandomAccessFile file, WavHeader header) {
        this.name = name;
        this.file = file;
        this.header = header;
        this.left = header.dataBytes();
        this.bytes = new byte[FRAMES_A_PASS * header.format().frameBytes()];
    }

    static WavCarrier open(Path path, double leastSeconds) throws BadInput {
        String name = String.valueOf(path);
        if (Files.isDirectory(path)) {
            throw new BadInput(name + " is a folder, not a WAV file");
        }
        try {
            RandomAccessFile file = new RandomAccessFile(path.toFile(), "r");
            try {
                return open(name, file, leastSeconds);
            } catch (IOException | BadInput e) {
                file.close();
                throw e;
            }
        } catch (FileNotFoundException e) {
            throw new BadInput(
                    Files.exists(path) ? name + " cannot be opened; may you read it?" : name + " does not exist", e);
        } catch (IOException e) {
            throw new BadInput(name + " cannot be read: " + e.getMessage(), e);
        }
    }

    private static WavCarrier open(String name, RandomAccessFile file, double leastSeconds)
            throws IOException, BadInput {
        WavHeader header = WavHeader.read(name, file);
        double seconds = header.format().seconds(header.frames());
        if (seconds < leastSeconds) {
            throw new BadInput(String.format(
                    Locale.ROOT, "%s holds %.3f s of sound; one reading takes %.3f s", name, seconds, leastSeconds));
        }
        file.seek(header.dataAt());
        return new WavCarrier(name, file, header);
    }

    @Override
    public SampleFormat format() {
        return header.format();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public OptionalDouble fileSeconds() {
        return OptionalDouble.of(header.format().seconds(header.frames()));
    }

    @Override
    public Progress poll(long waitNanos, SampleSink sink) throws BadInput {
        if (!begun) {
            begun = true;
            sink.begin(header.format(), 0);
            if (!header.remark().isEmpty()) {
                sink.garbled(name, header.remark());
            }
        }
        if (left == 0) {
            return Progress.ENDED;
        }
        int length = (int) Math.min(left, bytes.length);
        try {
            file.readFully(bytes, 0, length);
        } catch (IOException e) {
            throw new BadInput(name + " cannot be read on: " + e.getMessage(), e);
        }
        left -= length;
        sink.samples(bytes, length);
        return left == 0 ? Progress.ENDED : Progress.MORE;
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException e) {
            // It was only read from: nothing can be lost.
            left = 0;
        }
    }
}
