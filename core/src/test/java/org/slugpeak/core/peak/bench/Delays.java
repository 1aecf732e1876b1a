package org.slugpeak.core.peak.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * How late the finder tells a pass, beside the ideal observer on the same readings. A ratio below one shows that the finder is wrong at
 * rest more often than the observer may be; see {@link Rests}.
 */
public final class Delays {

    private static final int SEEDS_OF_A_KIND = 10_000;
    private static final long OFFSET = 5_000_000;

    private Delays() {}

    /**
     * Prints one line for each kind and for each group of kinds.
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
                "%nDelay after the top, %d runs of each, %s seeds; the ideal observer falsely flags once in %.0f h%n"
                        + "%-32s %8s %8s %8s %8s %6s %6s%n",
                runs,
                seeds.name().toLowerCase(Locale.ROOT),
                Observer.HOURS,
                "kind",
                "finder s",
                "ideal s",
                "ratio 50",
                "ratio 90",
                "early",
                "never");
        Map<String, List<Delay>> groups = new LinkedHashMap<>();
        List<Sweep> sweeps = Sweep.all();
        for (int kind = 0; kind < sweeps.size(); kind++) {
            Sweep sweep = sweeps.get(kind);
            if (sweep.family().name().startsWith(options.word("kind", ""))) {
                long first = seeds.first() + OFFSET + (long) kind * SEEDS_OF_A_KIND;
                List<Delay> delays = IntStream.range(0, runs)
                        .parallel()
                        .mapToObj(i -> Delay.of(sweep, first + i, Watcher::finder))
                        .toList();
                System.out.println(line(sweep.family().name(), delays));
                groups.computeIfAbsent(sweep.group(), g -> new ArrayList<>()).addAll(delays);
            }
        }
        summary(groups);
    }

    private static void summary(Map<String, List<Delay>> groups) {
        List<Delay> all = new ArrayList<>();
        groups.values().forEach(all::addAll);
        groups.forEach((group, delays) -> System.out.println(line("all " + group, delays)));
        System.out.println(line("all", all));
    }

    private static String line(String name, List<Delay> delays) {
        return String.format(
                Locale.ROOT,
                "%-32s %8.3f %8.3f %8.2f %8.2f %6d %6d",
                name,
                quantile(delays, Delay::seconds, 0.5),
                quantile(delays, Delay::observerSeconds, 0.5),
                quantile(delays, Delay::ratio, 0.5),
                quantile(delays, Delay::ratio, 0.9),
                delays.stream().mapToInt(Delay::early).sum(),
                delays.stream().filter(d -> Double.isInfinite(d.seconds())).count());
    }

    private static double quantile(List<Delay> delays, ToDoubleFunction<Delay> what, double part) {
        return Table.quantile(delays.stream().mapToDouble(what), part);
    }
}
