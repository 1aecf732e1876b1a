package org.slugpeak.core.peak.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Streams that went wrong once: packets, coarse stamps, zeros, two humps, a generator halved, words that contradict the reading. */
public final class Troubles {

    private static final int SEEDS_OF_A_KIND = 10_000;
    private static final long OFFSET = 6_000_000;

    private Troubles() {}

    /** Every kind; new ones go to the end, since the place of a kind is in its seeds. */
    static List<Trouble> all() {
        return Stream.of(Packets.all(), Generator.all(), Humps.all(), Contradictions.all())
                .flatMap(List::stream)
                .toList();
    }

    /**
     * Prints one line for each kind.
     *
     * @param arguments any of kind=prefix, runs=of each kind (50), seeds=development or judging
     */
    public static void main(String[] arguments) {
        print(Options.of(arguments, "kind", "runs", "seeds"));
    }

    static void print(Options options) {
        Seeds seeds = Seeds.ofWord(options.word("seeds", "development"));
        int runs = (int) options.number("runs", 50);
        System.out.printf(
                Locale.ROOT,
                "%nStreams that went wrong once, %d runs of each, %s seeds: how often%n",
                runs,
                seeds.name().toLowerCase(Locale.ROOT));
        List<Trouble> troubles = all();
        for (int kind = 0; kind < troubles.size(); kind++) {
            Trouble trouble = troubles.get(kind);
            if (trouble.name().startsWith(options.word("kind", ""))) {
                print(trouble, seeds.first() + OFFSET + (long) kind * SEEDS_OF_A_KIND, runs);
            }
        }
    }

    private static void print(Trouble trouble, long first, int runs) {
        int[] counts = counts(trouble, first, runs);
        String told = IntStream.range(0, counts.length)
                .mapToObj(i -> trouble.counted().get(i) + " " + counts[i])
                .collect(Collectors.joining(", "));
        System.out.printf(Locale.ROOT, "%-36s %s%n", trouble.name(), told);
    }

    static int[] counts(Trouble trouble, long first, int runs) {
        return IntStream.range(0, runs)
                .parallel()
                .mapToObj(i -> trouble.play().run(new SplittableRandom(first + i)))
                .reduce(Troubles::plus)
                .orElseThrow();
    }

    private static int[] plus(int[] one, int[] other) {
        int[] sum = Arrays.copyOf(one, one.length);
        Arrays.setAll(sum, i -> one[i] + other[i]);
        return sum;
    }
}
