package org.slugpeak.bridge.sound;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Locale;
import org.slugpeak.bridge.source.BadInput;

/**
 * What the head of a WAV file says (Multimedia Programming Interface and Data Specifications 1.0, IBM and Microsoft, 1991,
 * and its extensible format of 1999): PCM of 8, 16, 24 and 32 bits, and IEEE float of 32 and 64 bits.
 *
 * @param format of the samples
 * @param dataAt where they begin in the file
 * @param dataBytes how many bytes of them there are, whole frames only
 * @param remark what was wrong with the head, though the samples can be read; empty where nothing was
 */
record WavHeader(SampleFormat format, long dataAt, long dataBytes, String remark) {

    private static final int PCM = 1;
    private static final int IEEE_FLOAT = 3;
    private static final int EXTENSIBLE = 0xfffe;
    private static final int MOST_CHANNELS = 64;
    private static final int LOWEST_RATE = 4000;
    private static final int HIGHEST_RATE = 400_000;
    /** Recorders that write to a pipe put a length that cannot be, because they do not know it yet. */
    private static final long STREAMED = 0x7fff_0000L;

    static WavHeader read(String name, RandomAccessFile file) throws IOException, BadInput {
        return new Reader(name, file).read();
    }

    long frames() {
        return dataBytes / format.frameBytes();
    }

    /** Goes from chunk to chunk. */
    private record Reader(String name, RandomAccessFile file) {

        WavHeader read() throws IOException, BadInput {
            if (file.length() == 0) {
                throw bad("is empty");
            }
            String riff = tag(0);
            if ("RF64".equals(riff) || "RIFX".equals(riff)) {
                throw bad("is a " + riff + " file, which is not read; save it as an ordinary WAV file");
            }
            if (!"RIFF".equals(riff) || !"WAVE".equals(tag(8))) {
                throw bad("is not a WAV file; record or save it as WAV, 16-bit PCM");
            }
            return chunks();
        }

        private WavHeader chunks() throws IOException, BadInput {
            long at = 12;
            SampleFormat format = null;
            while (at + 8 <= file.length()) {
                String id = tag(at);
                long size = little(at + 4, 4).getInt() & 0xffffffffL;
                if ("fmt ".equals(id)) {
                    format = format(at + 8, size);
                } else if ("data".equals(id)) {
                    if (format == null) {
                        throw bad("has its samples before their description; save it again as WAV, 16-bit PCM");
                    }
                    return data(format, at + 8, size);
                }
                at += 8 + size + (size & 1);
            }
            throw bad("ends before its samples begin: it was cut short");
        }

        private SampleFormat format(long at, long size) throws IOException, BadInput {
            if (size < 16 || at + size > file.length()) {
                throw bad("has a damaged head; save it again as WAV, 16-bit PCM");
            }
            ByteBuffer head = little(at, (int) Math.min(size, 40));
            int code = head.getShort(0) & 0xffff;
            int channels = head.getShort(2) & 0xffff;
            long rate = head.getInt(4) & 0xffffffffL;
            int frame = head.getShort(12) & 0xffff;
            int bits = head.getShort(14) & 0xffff;
            if (code == EXTENSIBLE && head.capacity() >= 26) {
                code = head.getShort(24) & 0xffff;
            }
            Encoding encoding = encoding(code, bits);
            if (channels == 0 || channels > MOST_CHANNELS || frame != channels * encoding.bytes()) {
                throw bad("contradicts itself: " + channels + " channels of " + bits + " bits in " + frame
                        + " bytes; save it again as WAV, 16-bit PCM");
            }
            if (rate < LOWEST_RATE || rate > HIGHEST_RATE) {
                throw bad("has " + rate + " samples a second; 4000 to 400000 can be measured");
            }
            return new SampleFormat((int) rate, channels, encoding);
        }

        private Encoding encoding(int code, int bits) throws BadInput {
            if (code == PCM) {
                return switch (bits) {
                    case 8 -> Encoding.UNSIGNED_8;
                    case 16 -> Encoding.SIGNED_16;
                    case 24 -> Encoding.SIGNED_24;
                    case 32 -> Encoding.SIGNED_32;
                    default -> throw bad("has samples of " + bits + " bits; save it with 16 or 24 bits");
                };
            }
            if (code == IEEE_FLOAT && (bits == 32 || bits == 64)) {
                return bits == 32 ? Encoding.FLOAT_32 : Encoding.FLOAT_64;
            }
            throw bad("is compressed (" + codec(code) + "); save it as WAV, 16-bit PCM");
        }

        private WavHeader data(SampleFormat format, long at, long claimed) throws IOException, BadInput {
            long there = file.length() - at;
            boolean streamed = (claimed >= STREAMED && claimed > there) || (claimed == 0 && riffSize() == 0);
            long bytes = streamed ? there : Math.min(claimed, there);
            bytes -= bytes % format.frameBytes();
            if (bytes == 0) {
                throw bad("holds no samples");
            }
            return new WavHeader(format, at, bytes, remark(format, claimed, there, streamed));
        }

        private String remark(SampleFormat format, long claimed, long there, boolean streamed) {
            if (streamed) {
                return "its head gives no length: read to the end of the file";
            }
            if (claimed > there) {
                return String.format(
                        Locale.ROOT,
                        "it was cut short: %.2f s of %.2f s are there",
                        format.seconds(there / format.frameBytes()),
                        format.seconds(claimed / format.frameBytes()));
            }
            return claimed % format.frameBytes() == 0 ? "" : "its last sample is incomplete and was left out";
        }

        private long riffSize() throws IOException {
            return little(4, 4).getInt() & 0xffffffffL;
        }

        private String tag(long at) throws IOException, BadInput {
            if (at + 4 > file.length()) {
                throw bad("is not a WAV file: it is too short for one");
            }
            StringBuilder text = new StringBuilder();
            for (byte b : little(at, 4).array()) {
                text.append((char) (b & 0x7f));
            }
            return text.toString();
        }

        private ByteBuffer little(long at, int length) throws IOException {
            byte[] bytes = new byte[length];
            file.seek(at);
            file.readFully(bytes);
            return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        }

        private BadInput bad(String what) {
            return new BadInput(name + " " + what);
        }

        private static String codec(int code) {
            return switch (code) {
                case 2 -> "Microsoft ADPCM";
                case 6 -> "A-law";
                case 7 -> "mu-law";
                case 0x11 -> "IMA ADPCM";
                case 0x31 -> "GSM 6.10";
                case 0x55 -> "MP3";
                default -> String.format(Locale.ROOT, "format 0x%04x", code);
            };
        }
    }
}
