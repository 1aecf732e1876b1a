package org.slugpeak.cli.display;

/**
 * Which part of the screen stands in which row. Rows count from 0 at the top; a part that does not fit lies below the window
 * and is cut off. Immutable; any thread may use it.
 *
 * @param banner first row of the alarm or note; the header is row 0
 * @param digits first row of the reading
 * @param digitScale size of its block digits; 0 means plain text
 * @param facts row of percent and decibels
 * @param bar first row of the bar
 * @param barRows its height
 * @param hasTicks whether a row of numbers follows the bar
 * @param call first row of the verdict in one word
 * @param callScale size of its block letters; 0 means plain text
 * @param sentence row of the verdict in a sentence
 * @param keys first row of the key map
 */
record Layout(
        int banner,
        int digits,
        int digitScale,
        int facts,
        int bar,
        int barRows,
        boolean hasTicks,
        int call,
        int callScale,
        int sentence,
        int keys) {

    /** The digits of a reading with its sign and point. */
    static final int READING_CHARACTERS = 6;

    /** Most words for a verdict with their arrow; the few that are longer are drawn smaller. */
    private static final int CALL_CHARACTERS = 9;

    private static final int ONE_ROW_PARTS = 5;
    private static final int TICKS_FROM_ROWS = 16;
    private static final int TALLEST_BAR = 5;
    private static final int TALLEST_BANNER = 4;
    private static final int SMALL_ROWS = 12;

    /** The rows for an alarm or a note: two at all times, so that a longer one does not move the rest, and more if need be. */
    static int bannerRows(int height, int needed) {
        return height < SMALL_ROWS ? 1 : Math.max(2, Math.min(TALLEST_BANNER, needed));
    }

    static int mostKeyRows(int height) {
        return height < TICKS_FROM_ROWS ? 1 : 2;
    }

    static Layout of(int width, int height, int bannerRows, int keyRows, Symbols symbols) {
        boolean ticks = height >= TICKS_FROM_ROWS;
        int spare = height - ONE_ROW_PARTS - (bannerRows - 1) - keyRows - (ticks ? 1 : 0);
        Sizes sizes = Sizes.largest(width - 2, spare, symbols);
        spare -= sizes.rows(symbols);
        int barRows = 1 + Math.max(0, Math.min(TALLEST_BAR - 1, spare / 5));
        int gap = Math.max(0, spare - barRows + 1) / 4;
        int digits = 1 + bannerRows + gap;
        int facts = digits + sizes.digitRows(symbols);
        int bar = facts + 1 + gap;
        int call = bar + barRows + (ticks ? 1 : 0) + gap;
        int sentence = call + sizes.callRows(symbols);
        return new Layout(
                1,
                digits,
                sizes.digits,
                facts,
                bar,
                barRows,
                ticks,
                call,
                sizes.call,
                sentence,
                Math.max(sentence + 1, height - keyRows));
    }

    /**
     * How large the letters are.
     *
     * @param digits scale of the reading
     * @param call scale of the verdict
     */
    private record Sizes(int digits, int call) {

        /** What the hand is to do is always large; then the reading as large as the rest allows, and the word with it. */
        static Sizes largest(int columns, int rows, Symbols symbols) {
            int widest = columns / BlockLetters.columns("0".repeat(READING_CHARACTERS), 1);
            int widestCall = Math.max(1, columns / BlockLetters.columns("0".repeat(CALL_CHARACTERS), 1));
            for (int digits = widest; digits >= 0; digits--) {
                for (int call = Math.max(1, Math.min(digits, widestCall)); call >= 1; call--) {
                    Sizes sizes = new Sizes(digits, call);
                    if (sizes.rows(symbols) <= rows) {
                        return sizes;
                    }
                }
            }
            return new Sizes(0, 0);
        }

        int digitRows(Symbols symbols) {
            return digits == 0 ? 1 : BlockLetters.rows(digits, symbols);
        }

        int callRows(Symbols symbols) {
            return call == 0 ? 1 : BlockLetters.rows(call, symbols);
        }

        int rows(Symbols symbols) {
            return digitRows(symbols) + callRows(symbols);
        }
    }
}
