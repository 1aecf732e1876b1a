package org.slugpeak.bridge.testkit;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.slugpeak.bridge.source.Decoder;

/** Feeds bytes to a decoder that has just begun and writes down what it says. Stateless. */
public final class DecoderDrive {

    private static final long ARRIVAL_NANOS = 1_000_000_000;

    private DecoderDrive() {}

    /**
     * All bytes at one time, in the given pieces.
     *
     * @param decoder a new one
     * @param pieces in order
     * @return what it said
     */
    public static Transcript feed(Decoder decoder, List<byte[]> pieces) {
        Transcript transcript = new Transcript();
        decoder.begin(0, transcript);
        for (byte[] piece : pieces) {
            decoder.decode(piece, piece.length, ARRIVAL_NANOS, transcript);
        }
        return transcript;
    }

    /**
     * Text in one piece.
     *
     * @param decoder a new one
     * @param text with its line ends
     * @return what it said
     */
    public static Transcript feed(Decoder decoder, String text) {
        return feed(decoder, List.of(text.getBytes(StandardCharsets.ISO_8859_1)));
    }
}
