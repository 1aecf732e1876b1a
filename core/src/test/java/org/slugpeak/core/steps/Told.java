package org.slugpeak.core.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.NoPeakReason;
import org.slugpeak.core.peak.Seek;

/** A finder whose words are kept: the number of the step, from 1, and what was said at it. */
final class Told implements StepListener {

    final List<String> words = new ArrayList<>();
    final List<StepsBack> passes = new ArrayList<>();
    final StepFinder finder;
    private long step;

    Told(Seek seek) {
        this.finder = new StepFinder(seek, this);
    }

    static Told of(Seek seek, double... values) {
        Told told = new Told(seek);
        told.type(values);
        return told;
    }

    void type(double... values) {
        for (double value : values) {
            finder.accept(++step, value);
        }
    }

    /** The last pass. */
    StepsBack back() {
        return passes.get(passes.size() - 1);
    }

    private void say(long tNanos, String word) {
        words.add(tNanos + " " + word);
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb, StepsBack back) {
        passes.add(back);
        say(tNanos, String.format(Locale.ROOT, "passed %s at %d, back %.2f", best, bestAtNanos, back.steps()));
    }

    @Override
    public void further(long tNanos, StepsBack back) {
        say(tNanos, String.format(Locale.ROOT, "further, back %.2f", back.steps()));
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        say(tNanos, "returned to " + value);
    }

    @Override
    public void noPeak(long tNanos, NoPeakReason reason) {
        say(tNanos, reason.code());
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        say(tNanos, hint.code());
    }
}
