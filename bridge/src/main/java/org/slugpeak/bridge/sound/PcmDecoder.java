package org.slugpeak.bridge.sound;

/** Bytes to samples of one channel. */
final class PcmDecoder {

    private final SampleFormat format;
    private final Channel channel;
    private long notNumbers;

    PcmDecoder(SampleFormat format, Channel channel) {
        this.format = format;
        this.channel = channel;
    }

    /** Decodes whole frames; returns how many. */
    int decode(byte[] bytes, int length, double[] into) {
        int frames = length / format.frameBytes();
        for (int i = 0; i < frames; i++) {
            double sample = frame(bytes, i * format.frameBytes());
            if (!Double.isFinite(sample)) {
                notNumbers++;
                sample = 0;
            }
            into[i] = sample;
        }
        return frames;
    }

    /** Samples of a float stream that were no finite number, and were taken as zero. */
    long notNumbers() {
        return notNumbers;
    }

    private double frame(byte[] bytes, int at) {
        Encoding encoding = format.encoding();
        return switch (channel) {
            case LEFT -> encoding.sample(bytes, at);
            case RIGHT -> encoding.sample(bytes, at + (format.channels() > 1 ? encoding.bytes() : 0));
            case MIX -> {
                double sum = 0;
                for (int c = 0; c < format.channels(); c++) {
                    sum += encoding.sample(bytes, at + c * encoding.bytes());
                }
                yield sum / format.channels();
            }
        };
    }
}
