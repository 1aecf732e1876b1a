package org.slugpeak.core.peak.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.PeakListener;

/** Keeps what a finder told, with the time it was truly told at. */
final class Words implements PeakListener {

    /**
     * One word.
     *
     * @param name as in records
     * @param seconds true time at which it was told, whatever the stamps say
     */
    record Word(String name, double seconds) {}

    final List<Word> all = new ArrayList<>();
    private double now;

    /** What is told from here on is told at this time. */
    void at(double seconds) {
        now = seconds;
    }

    long count(String name, Predicate<Word> which) {
        return all.stream().filter(w -> w.name().equals(name)).filter(which).count();
    }

    boolean told(String name, Predicate<Word> which) {
        return count(name, which) > 0;
    }

    Optional<Word> firstAfter(String name, double seconds) {
        return all.stream()
                .filter(w -> w.name().equals(name) && w.seconds() >= seconds)
                .findFirst();
    }

    private void tell(String name) {
        all.add(new Word(name, now));
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        tell("passed");
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        tell("returned");
    }

    @Override
    public void held(long tNanos, double value, double lossDb) {
        tell("held");
    }

    @Override
    public void twoPeaks(long tNanos, double first, double second, double dipDb) {
        tell("two-peaks");
    }

    @Override
    public void noPeak(long tNanos, NoPeakReason reason) {
        tell(reason.code());
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        tell(hint.code());
    }
}
