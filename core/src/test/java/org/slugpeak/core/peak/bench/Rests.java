package org.slugpeak.core.peak.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Hours of readings at rest, one disturbance at a time, at every reading rate: how often the finder turns somebody round who does
 * nothing. Each hour is one finder; it sees a rise from half, once or as often as a new adjuster begins, and then nothing but the
 * disturbance.
 */
public final class Rests {

    private static final double[] RATES = {2, 5, 10, 50, 200, 1000};
    private static final int SEEDS_OF_A_KIND = 100_000;
    private static final int SEEDS_OF_A_RATE = 10_000;

    private final List<Kind> kinds;
    private final Seeds seeds;
    private final double hours;
    private final double everySeconds;

    private Rests(Options options) throws IOException {
        kinds = kinds(options.word("recording", ""), options.number("recorded", 0));
        seeds = Seeds.ofWord(options.word("seeds", "development"));
        hours = options.number("hours", 1);
        everySeconds = 60 * options.number("every", Double.POSITIVE_INFINITY);
    }

    private static List<Kind> kinds(String recording, double samplesPerSecond) throws IOException {
        if (recording.isEmpty()) {
            return Kind.all();
        }
        if (!(samplesPerSecond > 0)) {
            throw new IllegalArgumentException(
                    "say with recorded=... how many readings a second " + recording + " has");
        }
        return List.of(new Kind("recording", Recorded.of(Path.of(recording), samplesPerSecond)));
    }

    /**
     * Prints one line for each kind and rate.
     *
     * @param arguments any of kind=prefix, rate=readings per second, hours=of each (1), every=minutes from adjuster to adjuster (never),
     *     seeds=development or judging; recording=file with recorded=its readings per second takes the place of all kinds
     * @throws IOException if the recording cannot be read
     */
    public static void main(String[] arguments) throws IOException {
        print(Options.of(arguments, "kind", "rate", "hours", "every", "seeds", "recording", "recorded"));
    }

    static void print(Options options) throws IOException {
        Rests rests = new Rests(options);
        System.out.printf(
                Locale.ROOT,
                "%nAt rest, %.1f h of each, %s seeds, per 10 h:%n%-24s %7s %8s %8s %8s %8s%n",
                rests.hours,
                options.word("seeds", "development"),
                "kind",
                "rate",
                "passed",
                "again",
                "wrong",
                "in rise");
        double only = options.number("rate", 0);
        for (Kind kind : rests.kinds) {
            if (kind.name().startsWith(options.word("kind", ""))) {
                rests.print(
                        kind,
                        Arrays.stream(RATES).filter(r -> only == 0 || r == only).toArray());
            }
        }
    }

    private void print(Kind kind, double... rates) {
        int parts = (int) Math.ceil(hours);
        List<Rest.Count> counts = IntStream.range(0, rates.length * parts)
                .parallel()
                .mapToObj(i -> hour(kind, rates[rates.length - 1 - i / parts], i % parts))
                .toList();
        for (int rate = 0; rate < rates.length; rate++) {
            int begin = (rates.length - 1 - rate) * parts;
            Rest.Count sum = counts.subList(begin, begin + parts).stream().reduce(Rest.Count.NONE, Rest.Count::plus);
            System.out.printf(Locale.ROOT, "%-24s %5.0f/s %s%n", kind.name(), rates[rate], sum.times(10 / hours));
        }
    }

    private Rest.Count hour(Kind kind, double rate, int hour) {
        int place = Arrays.binarySearch(RATES, rate);
        long seed =
                seeds.first() + (long) kinds.indexOf(kind) * SEEDS_OF_A_KIND + (long) place * SEEDS_OF_A_RATE + hour;
        double lasts = Math.min(1, hours - hour) * 3600;
        Disturbance disturbance = kind.maker().make(new SplittableRandom(seed), rate);
        return Rest.of(disturbance, rate, lasts, everySeconds);
    }
}
