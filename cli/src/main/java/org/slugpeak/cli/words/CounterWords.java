package org.slugpeak.cli.words;

import org.slugpeak.core.session.Said;

/** What a counter's reading says of a generator that a hand sets. All methods are pure. */
final class CounterWords {

    /** A hundred hertz at an IF, a fiftieth of what it lets through: nobody turns a dial nearer. Common practice, no source. */
    private static final double SAME_SHARE = 2e-4;

    private CounterWords() {}

    static String of(Said.Counted it) {
        String counted = Frequencies.plain(it.hz());
        if (it.taken()) {
            return Phrase.COUNTED_POINT.of(counted);
        }
        double high = it.hz() - it.wantedHz();
        if (Math.abs(high) <= SAME_SHARE * it.wantedHz()) {
            return Phrase.COUNTED_RIGHT.of(counted);
        }
        String by = Frequencies.plain(Math.abs(high));
        return high > 0 ? Phrase.COUNTED_HIGH.of(counted, by) : Phrase.COUNTED_LOW.of(counted, by);
    }
}
