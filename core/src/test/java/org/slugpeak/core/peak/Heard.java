package org.slugpeak.core.peak;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.slugpeak.core.reading.Reading;

/** A finder that has been given a stream, and what it said at which reading. */
final class Heard {

    /** What turns somebody's hand or ends a search; the other words are remarks. */
    private static final Set<String> VERDICTS = Set.of(
            "passed", "returned", "held", "two-peaks", "flat", "end-of-travel", "reversed", "dead-zero", "wrong-way");

    /**
     * One word, and how things stood after the reading that brought it.
     *
     * @param word what was said
     * @param index of the reading, from 0
     * @param trend then
     * @param best then
     * @param bestSigma then
     */
    record Said(Told.Word word, int index, Trend trend, double best, double bestSigma) {

        String text() {
            return word.word();
        }
    }

    final PeakFinder finder;
    final Told told = new Told();
    final List<Said> said = new ArrayList<>();
    private int count;

    Heard(PeakSettings settings) {
        finder = PeakFinder.create(settings, told);
    }

    /** A finder with the usual dwell that has heard all of a stream. */
    static Heard of(Seek seek, List<Reading> readings) {
        return new Heard(PeakSettings.defaults().withSeek(seek)).hear(readings, f -> {});
    }

    /** Goes on with more readings, and looks at the finder after each. */
    Heard hear(List<Reading> readings, Consumer<PeakFinder> afterEach) {
        readings.forEach(reading -> {
            hear(reading);
            afterEach.accept(finder);
        });
        return this;
    }

    void hear(Reading reading) {
        finder.accept(reading.tNanos(), reading.value(), reading.condition());
        double best = finder.best();
        for (Told.Word word : told.all.subList(said.size(), told.all.size())) {
            said.add(new Said(word, count, finder.trend(), best, finder.bestSigma()));
        }
        count++;
    }

    List<Said> of(String word) {
        return said.stream().filter(s -> s.text().equals(word)).toList();
    }

    List<Said> verdicts() {
        return said.stream().filter(s -> VERDICTS.contains(s.text())).toList();
    }
}
