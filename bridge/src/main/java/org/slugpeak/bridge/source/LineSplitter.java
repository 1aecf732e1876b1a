package org.slugpeak.bridge.source;

import java.nio.charset.StandardCharsets;

/**
 * Cuts an instrument's bytes into lines. A line ends at CR, LF or both; empty lines are passed over. The first line after
 * {@link #begin} may have lost its head and is marked so, as is one behind bytes that are no text, whose line end may be none. Bytes that are no text, and lines that never end, are said and left
 * out. One thread at a time.
 */
public final class LineSplitter {

    /** No instrument that sends readings as text needs more. */
    public static final int LONGEST_LINE = 256;

    /** A unit such as the ohm or micro sign takes two bytes above 127; more than a third of a line is no text. */
    private static final int HIGH_BYTES_SHARE = 3;

    private static final int SPACE = 0x20;
    private static final int DELETE = 0x7F;

    private final byte[] line = new byte[LONGEST_LINE];
    private int length;
    private boolean whole;
    private boolean skipping;
    private boolean doubtful;

    /** Takes the lines. */
    public interface Taker {

        /**
         * A line of text came.
         *
         * @param text without its end, without spaces at either side; not empty
         * @param whole false where its beginning may be missing
         */
        void line(String text, boolean whole);

        /**
         * Something came that is no line of text.
         *
         * @param kind what kind of damage
         * @param problem one line
         */
        void garbled(Garble kind, String problem);
    }

    /** Forgets a half line: the link was opened anew, so that the next line may have lost its head. */
    public void begin() {
        length = 0;
        whole = false;
        skipping = false;
        doubtful = false;
    }

    /**
     * Cuts a chunk.
     *
     * @param bytes the chunk; not kept
     * @param count how many of them count
     * @param taker is given each line as soon as it has ended
     */
    public void accept(byte[] bytes, int count, Taker taker) {
        for (int i = 0; i < count; i++) {
            byte each = bytes[i];
            if (each == '\n' || each == '\r') {
                end(taker);
            } else if (!skipping) {
                add(each, taker);
            }
        }
    }

    private void add(byte each, Taker taker) {
        if (length == LONGEST_LINE) {
            skipping = true;
            giveUp(taker);
        } else {
            line[length++] = each;
        }
    }

    private void giveUp(Taker taker) {
        if (isReadable()) {
            taker.garbled(
                    Garble.TORN,
                    "no line end in " + LONGEST_LINE + " characters: this is no instrument that sends lines");
        } else {
            unreadable(taker);
        }
    }

    private void end(Taker taker) {
        if (!skipping && length > 0) {
            if (isReadable()) {
                String text = new String(line, 0, length, StandardCharsets.ISO_8859_1).strip();
                if (!text.isEmpty()) {
                    taker.line(text, whole);
                }
            } else {
                unreadable(taker);
            }
        }
        length = 0;
        skipping = false;
        whole = !doubtful;
        doubtful = false;
    }

    private void unreadable(Taker taker) {
        doubtful = true;
        taker.garbled(Garble.UNREADABLE, "bytes that are no text: is the speed right? Set it with --baud");
    }

    private boolean isReadable() {
        int high = 0;
        for (int i = 0; i < length; i++) {
            int each = line[i] & 0xFF;
            if (each == DELETE || (each < SPACE && each != '\t')) {
                return false;
            }
            if (each > DELETE) {
                high++;
            }
        }
        return high * HIGH_BYTES_SHARE <= length;
    }
}
