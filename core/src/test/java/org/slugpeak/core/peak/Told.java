package org.slugpeak.core.peak;

import java.util.ArrayList;
import java.util.List;

/** Remembers what a finder told. */
final class Told implements PeakListener {

    /**
     * One verdict or hint.
     *
     * @param word what was told
     * @param tNanos when
     * @param value best, smoothed value, second top, or amount
     * @param db drop, loss or dip
     * @param atNanos time of the best of a pass
     */
    record Word(String word, long tNanos, double value, double db, long atNanos) {}

    final List<Word> all = new ArrayList<>();

    List<String> words() {
        return all.stream().map(Word::word).toList();
    }

    Word first(String word) {
        return all.stream().filter(w -> w.word().equals(word)).findFirst().orElseThrow();
    }

    long count(String word) {
        return all.stream().filter(w -> w.word().equals(word)).count();
    }

    private void tell(String word, long tNanos, double value, double db, long atNanos) {
        all.add(new Word(word, tNanos, value, db, atNanos));
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        tell("passed", tNanos, best, dropDb, bestAtNanos);
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        tell("returned", tNanos, value, lossDb, 0);
    }

    @Override
    public void held(long tNanos, double value, double lossDb) {
        tell("held", tNanos, value, lossDb, 0);
    }

    @Override
    public void twoPeaks(long tNanos, double first, double second, double dipDb) {
        tell("two-peaks", tNanos, second, dipDb, 0);
    }

    @Override
    public void noPeak(long tNanos, NoPeakReason reason) {
        tell(reason.code(), tNanos, Double.NaN, Double.NaN, 0);
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        tell(hint.code(), tNanos, amount, Double.NaN, 0);
    }
}
