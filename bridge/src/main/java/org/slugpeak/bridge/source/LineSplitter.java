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

    /** An instrument that answers questions may say a lot of itself. */
    private static final int LONGEST_ANSWER = 8192;

    /** A screen's own control codes may stand in an answer; more than a quarter of a line is no text. */
    private static final int CONTROLS_SHARE = 4;

    private final boolean forgiving;
    private final byte[] line;
    private int length;
    private boolean whole;
    private boolean skipping;
    private boolean doubtful;

    /** For instruments that send line after line. */
    public LineSplitter() {
        this(LONGEST_LINE, false);
    }

    private LineSplitter(int longest, boolean forgiving) {
        this.line = new byte[longest];
        this.forgiving = forgiving;
    }

    /**
     * For instruments that answer: lines may be long, control codes before the text do not count (NUL, XON), and some within it
     * are passed on.
     *
     * @return a splitter
     */
    public static LineSplitter forgiving() {
        return new LineSplitter(LONGEST_ANSWER, true);
    }

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
        if (length == line.length) {
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
                    "no line end in " + line.length + " characters: this is no instrument that sends lines");
        } else {
            unreadable(taker);
        }
    }

    private void end(Taker taker) {
        if (!skipping && length > 0) {
            if (isReadable()) {
                int from = forgiving ? firstPrinting() : 0;
                String text = new String(line, from, length - from, StandardCharsets.ISO_8859_1).strip();
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
        int from = forgiving ? firstPrinting() : 0;
        int high = 0;
        int controls = 0;
        for (int i = from; i < length; i++) {
            int each = line[i] & 0xFF;
            controls += isControl(each) ? 1 : 0;
            high += each > DELETE ? 1 : 0;
        }
        return high * HIGH_BYTES_SHARE <= length - from
                && (forgiving ? controls * CONTROLS_SHARE <= length - from : controls == 0);
    }

    private int firstPrinting() {
        int from = 0;
        while (from < length && isControl(line[from] & 0xFF)) {
            from++;
        }
        return from;
    }

    private static boolean isControl(int each) {
        return each == DELETE || (each < SPACE && each != '\t');
    }
}
