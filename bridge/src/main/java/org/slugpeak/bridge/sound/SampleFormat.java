package org.slugpeak.bridge.sound;

/** What a stream of audio bytes is made of. */
record SampleFormat(int rateHz, int channels, Encoding encoding) {

    int frameBytes() {
        return channels * encoding.bytes();
    }

    double seconds(long frames) {
        return (double) frames / rateHz;
    }
}
