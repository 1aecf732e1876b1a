package org.slugpeak.bridge.file;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Text of bytes whose encoding nobody has told: what is no UTF-8 is Latin-1, where every byte is a letter. Stateless. */
final class Plain {

    private Plain() {}

    static String text(byte[] bytes, int from, int to) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes, from, to - from))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
        }
    }
}
