package org.slugpeak.bridge.file;

import org.slugpeak.bridge.source.BadInput;

/** Tells text in UTF-8 or ASCII from what only looks like a file of lines. */
final class TextCheck {

    /** So many control characters in one line are no slip of a cable. */
    private static final int BINARY = 8;

    private TextCheck() {}

    /** Where the text of the first line begins: behind a byte order mark. */
    static int afterMark(byte[] bytes, int from, int to, String name) throws BadInput {
        int first = to - from >= 2 ? ((bytes[from] & 0xff) << 8) | (bytes[from + 1] & 0xff) : 0;
        if (first == 0xfffe || first == 0xfeff) {
            throw utf16(name);
        }
        boolean utf8 = first == 0xefbb && to - from >= 3 && bytes[from + 2] == (byte) 0xbf;
        return utf8 ? from + 3 : from;
    }

    /** How many bytes of a line cannot stand in a text. */
    static int controls(byte[] bytes, int from, int to) {
        int count = 0;
        for (int i = from; i < to; i++) {
            boolean control = bytes[i] >= 0 && bytes[i] < ' ' && bytes[i] != '\t' && bytes[i] != '\f';
            count += control ? 1 : 0;
        }
        return count;
    }

    /** Refuses a line that is no text at all. */
    static void refuseBinary(byte[] bytes, int from, int to, String name) throws BadInput {
        if (controls(bytes, from, to) < BINARY) {
            return;
        }
        int zeros = 0;
        for (int i = from; i < to; i++) {
            zeros += bytes[i] == 0 ? 1 : 0;
        }
        if (Math.abs(2 * zeros - (to - from)) <= 2) {
            throw utf16(name);
        }
        throw new BadInput(name + " is not text: give a file with one reading a line, 'value' or 'seconds,value'");
    }

    private static BadInput utf16(String name) {
        return new BadInput(name + " is UTF-16 text: save it as UTF-8 or plain text and try again");
    }
}
