package org.slugpeak.bridge.toml;

import java.util.Collection;
import java.util.Optional;

/** Finds the word that was probably meant. All methods may be called by any thread. */
public final class Suggestion {

    /** More slips than this make another word. */
    private static final int MOST_SLIPS = 3;

    private Suggestion() {}

    /**
     * The end of a message about a word that is not known.
     *
     * @param written as the user wrote it
     * @param known the words that would do
     * @return names the word that was probably meant; all of them where none is near
     */
    public static String didYouMean(String written, Collection<String> known) {
        return nearest(written, known)
                .map(word -> "; did you mean '" + word + "'?")
                .orElse("; known here: "
                        + String.join(", ", known.stream().sorted().toList()));
    }

    private static Optional<String> nearest(String written, Collection<String> known) {
        Optional<String> best = Optional.empty();
        int fewest = Math.min(MOST_SLIPS, written.length() / 2) + 1;
        for (String word : known) {
            int slips = slips(written, word);
            if (slips < fewest) {
                fewest = slips;
                best = Optional.of(word);
            }
        }
        return best;
    }

    /** The edit distance of V. I. Levenshtein, Soviet Physics Doklady 10 (1966) 707, by dynamic programming on one row. */
    private static int slips(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int replaced = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
