package org.slugpeak.core.peak.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Runs the whole evaluation and prints it; the plot goes to a file. */
public final class Bench {

    /** Development used seeds below 22,000,000; these have not been looked at while the finder was made. */
    private static final long REPORTED_SEEDS = 30_000_000;

    private static final List<String> WATCHERS = List.of("finder", "max hold 5 %", "mean 1 s, 2 %", "adaptive mean");
    private static final List<Watcher.Maker> MAKERS =
            List.of(Watcher::finder, Baseline::maxHold, Baseline::slowMean, Baseline::adaptive);

    private static final String PARTS = "families,steady,throughput,rests,delays,troubles,alone";

    private static final double HALF_A_MINUTE = 30;

    private Bench() {}

    /**
     * Prints the tables.
     *
     * @param arguments any of parts=families,steady,throughput,rests,delays,troubles,alone (all), runs=of each kind (50), hours=of each rate (10
     *     steady, 1 of a disturbance), plot=file, seeds=development or judging, for the last four parts; and what those take by themselves
     * @throws IOException if the plot cannot be written or a recording cannot be read
     */
    public static void main(String[] arguments) throws IOException {
        Options options = Options.of(
                arguments, "parts", "runs", "hours", "plot", "seeds", "kind", "rate", "every", "recording", "recorded");
        for (String part : options.word("parts", PARTS).split(",", -1)) {
            switch (part) {
                case "families" ->
                    families((int) options.number("runs", 50), Path.of(options.word("plot", "target/peak-bench.svg")));
                case "steady" -> steady(options.number("hours", 10));
                case "throughput" -> Throughput.print();
                case "rests" -> Rests.print(options);
                case "delays" -> Delays.print(options);
                case "troubles" -> Troubles.print(options);
                case "alone" -> Alone.print(options);
                default -> throw new IllegalArgumentException("there is no part '" + part + "'; parts are " + PARTS);
            }
        }
    }

    private static void families(int seeds, Path file) throws IOException {
        Plot plot = new Plot();
        List<List<Run.Outcome>> all = new ArrayList<>();
        MAKERS.forEach(maker -> all.add(new ArrayList<>()));
        System.out.println(Table.HEAD + "   bound");
        for (Family family : Families.all()) {
            double bound = Bound.flaggedDb(family);
            double[] flagged = new double[MAKERS.size()];
            for (int i = 0; i < MAKERS.size(); i++) {
                List<Run.Outcome> runs = Table.runs(family, REPORTED_SEEDS, seeds, MAKERS.get(i));
                all.get(i).addAll(runs);
                flagged[i] = Table.quantile(runs.stream().mapToDouble(Run.Outcome::flaggedDb), 0.5);
                String name = i == 0 ? family.name() : "  " + WATCHERS.get(i);
                System.out.println(
                        Table.line(name, runs) + (i == 0 ? String.format(Locale.ROOT, "  %6.3f", bound) : ""));
            }
            plot.row(family.name(), bound, flagged);
        }
        for (int i = 0; i < MAKERS.size(); i++) {
            System.out.println(Table.line("all: " + WATCHERS.get(i), all.get(i)));
        }
        plot.write(file, WATCHERS);
        System.out.println("plot: " + file);
    }

    private static void steady(double hours) {
        System.out.printf(
                Locale.ROOT,
                "%nSteady readings, %.0f h for each rate and noise: false passed, false wrong-way;%n"
                        + "the same with a rise every half minute%n",
                hours);
        for (double rate : new double[] {2, 3, 10, 50, 200}) {
            for (double noise : new double[] {0.0005, 0.0035, 0.02, 0.05}) {
                long seed = REPORTED_SEEDS + Math.round(rate + 1e6 * noise);
                int[] unbroken = Steady.count(rate, noise, hours, Double.POSITIVE_INFINITY, seed);
                int[] rests = Steady.count(rate, noise, hours, HALF_A_MINUTE, seed);
                System.out.printf(
                        Locale.ROOT,
                        "%5.0f/s %5.2f %%: %d %d; %d %d%n",
                        rate,
                        100 * noise,
                        unbroken[0],
                        unbroken[1],
                        rests[0],
                        rests[1]);
            }
        }
    }
}
