package org.slugpeak.bridge.source;

/**
 * Finds frames of one length in an instrument's bytes: a window is offered at each byte until it is taken, and then the next
 * begins behind it; so a start in the middle, lost bytes and noise cost no more than they must. Bytes that belong to no frame are
 * told in bulk. One thread at a time.
 */
public final class FrameSplitter {

    /** Of a stream that is what it is thought to be, no more than one frame is ever lost in a row but by noise. */
    private static final int FRAMES_LOST = 4;

    private final byte[] window;
    private int filled;
    private int strayed;

    /** Takes the windows. */
    public interface Taker {

        /**
         * So many bytes as a frame has.
         *
         * @param bytes must not be kept or changed
         * @return whether they are a frame
         */
        boolean frame(byte[] bytes);

        /**
         * Bytes came that belong to no frame.
         *
         * @param count how many
         */
        void strayed(int count);
    }

    /**
     * For one kind of instrument.
     *
     * @param length bytes in a frame, at least 1
     */
    public FrameSplitter(int length) {
        this.window = new byte[length];
    }

    /** Forgets a half frame: the link was opened anew. */
    public void begin() {
        filled = 0;
        strayed = 0;
    }

    /**
     * Looks for frames in a chunk.
     *
     * @param bytes the chunk; not kept
     * @param count how many of them count
     * @param taker is given each window as soon as it is whole
     */
    public void accept(byte[] bytes, int count, Taker taker) {
        for (int i = 0; i < count; i++) {
            window[filled++] = bytes[i];
            if (filled == window.length) {
                offer(taker);
            }
        }
    }

    private void offer(Taker taker) {
        if (taker.frame(window)) {
            filled = 0;
            strayed = 0;
            return;
        }
        filled--;
        System.arraycopy(window, 1, window, 0, filled);
        strayed++;
        if (strayed == FRAMES_LOST * window.length) {
            taker.strayed(strayed);
            strayed = 0;
        }
    }
}
