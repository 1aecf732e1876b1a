package org.slugpeak.bridge.sound;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.IntToDoubleFunction;

/** WAV files with what a test wants in them, right or wrong. */
final class WavBytes {

    private int code = 1;
    private int channels = 1;
    private int rateHz = 48_000;
    private int bits = 16;
    private int frames = 48_000;
    private long claimedBytes = -1;
    private int blockAlign = -1;
    private String riff = "RIFF";
    private boolean extensible;
    private String extraChunk = "";
    private IntToDoubleFunction left = i -> 0;
    private IntToDoubleFunction right = i -> 0;

    static WavBytes wav() {
        return new WavBytes();
    }

    static IntToDoubleFunction sine(double hz, double amplitude, double rateHz) {
        return i -> amplitude * Math.sin(2 * Math.PI * hz / rateHz * i);
    }

    WavBytes code(int newCode) {
        code = newCode;
        return this;
    }

    WavBytes channels(int newChannels) {
        channels = newChannels;
        return this;
    }

    WavBytes rateHz(int newRate) {
        rateHz = newRate;
        return this;
    }

    WavBytes bits(int newBits) {
        bits = newBits;
        return this;
    }

    WavBytes frames(int newFrames) {
        frames = newFrames;
        return this;
    }

    WavBytes claiming(long bytes) {
        claimedBytes = bytes;
        return this;
    }

    WavBytes blockAlign(int newAlign) {
        blockAlign = newAlign;
        return this;
    }

    WavBytes riff(String newRiff) {
        riff = newRiff;
        return this;
    }

    WavBytes extensible() {
        extensible = true;
        return this;
    }

    WavBytes extraChunk(String text) {
        extraChunk = text;
        return this;
    }

    WavBytes left(IntToDoubleFunction newLeft) {
        left = newLeft;
        return this;
    }

    /** A sine on the left at whatever the sample rate will be. */
    WavBytes tone(double hz, double amplitude) {
        return left(i -> amplitude * Math.sin(2 * Math.PI * hz / rateHz * i));
    }

    WavBytes right(IntToDoubleFunction newRight) {
        right = newRight;
        return this;
    }

    Path in(Path folder) throws IOException {
        return Files.write(folder.resolve("tone.wav"), bytes());
    }

    byte[] bytes() {
        int frameBytes = channels * bits / 8;
        int fmt = extensible ? 40 : 16;
        int extra = extraChunk.isEmpty() ? 0 : 8 + extraChunk.length() + extraChunk.length() % 2;
        ByteBuffer out = ByteBuffer.allocate(12 + 8 + fmt + extra + 8 + frames * frameBytes)
                .order(ByteOrder.LITTLE_ENDIAN);
        tag(out, riff).putInt(out.capacity() - 8);
        tag(out, "WAVE");
        if (extra > 0) {
            tag(out, "LIST").putInt(extraChunk.length()).put(extraChunk.getBytes(StandardCharsets.US_ASCII));
            out.put(new byte[extraChunk.length() % 2]);
        }
        tag(out, "fmt ").putInt(fmt).putShort((short) (extensible ? 0xfffe : code));
        out.putShort((short) channels).putInt(rateHz).putInt(rateHz * frameBytes);
        out.putShort((short) (blockAlign < 0 ? frameBytes : blockAlign)).putShort((short) bits);
        if (extensible) {
            out.putShort((short) 22)
                    .putShort((short) bits)
                    .putInt(0)
                    .putShort((short) code)
                    .put(new byte[14]);
        }
        tag(out, "data").putInt((int) (claimedBytes < 0 ? (long) frames * frameBytes : claimedBytes));
        for (int i = 0; i < frames; i++) {
            for (int c = 0; c < channels; c++) {
                put(out, (c == 0 ? left : right).applyAsDouble(i));
            }
        }
        return out.array();
    }

    private static ByteBuffer tag(ByteBuffer out, String text) {
        return out.put(text.getBytes(StandardCharsets.US_ASCII));
    }

    private void put(ByteBuffer out, double sample) {
        if (code == 3) {
            if (bits == 32) {
                out.putFloat((float) sample);
            } else {
                out.putDouble(sample);
            }
            return;
        }
        double scale = Math.pow(2, bits - 1);
        long value = Math.max((long) -scale, Math.min((long) scale - 1, Math.round(sample * scale)));
        value += bits == 8 ? 128 : 0;
        for (int b = 0; b < bits / 8; b++) {
            out.put((byte) (value >> (8 * b)));
        }
    }
}
