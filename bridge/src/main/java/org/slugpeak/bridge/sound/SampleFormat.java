package org.slugpeak.bridge.sound;

import java.util.Locale;

/** What a stream of audio bytes is made of. */
record SampleFormat(int rateHz, int channels, Encoding encoding) {

    int frameBytes() {
        return channels * encoding.bytes();
    }

    double seconds(long frames) {
        return (double) frames / rateHz;
    }

    /** For example {@code 48 kHz 16-bit, 2 channels}. */
    String words() {
        String count = channels == 1 ? "mono" : channels + " channels";
        String khz = String.format(Locale.ROOT, "%.3f", rateHz / 1000.0).replaceAll("\\.?0+$", "");
        return khz + " kHz " + encoding.words() + ", " + count;
    }
}
