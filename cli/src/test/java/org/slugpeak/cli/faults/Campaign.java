package org.slugpeak.cli.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/**
 * Runs the campaign and prints one table: what was tried, how often it failed, and how to try the first failure again. Properties:
 * {@code faults.seed} (1), {@code faults.share} of the whole campaign (1.0), {@code faults.only} one word of the table (all). The exit
 * code is 1 where anything failed.
 */
public final class Campaign {

    private static final long SEED = Long.getLong("faults.seed", 1);
    private static final double SHARE = Double.parseDouble(System.getProperty("faults.share", "1.0"));
    private static final String ONLY = System.getProperty("faults.only", "");

    private Campaign() {}

    /** What came of one kind of fault. */
    private record Row(String name, int tried, List<String> failures, List<String> told, double seconds) {}

    /**
     * Runs it.
     *
     * @param args none
     */
    public static void main(String[] args) throws IOException {
        List<Trial> trials = new ArrayList<>(List.of(
                new KillOverPipe(),
                new KillOverTerminal(),
                new Replug(),
                new NetworkLost(),
                new SignalAnywhere(),
                new GeneratorLeft(),
                new TerminalClosed(),
                new FullOutput(),
                new FullDisk(),
                new FewDescriptors(),
                new MutatedFile(),
                new HostileVisitor(),
                new BusyMachine(),
                new LongRun()));
        trials.addAll(HostileInstrument.all());
        trials.addAll(MutatedBytes.all());
        List<Row> rows = new ArrayList<>();
        for (Trial trial : trials) {
            if (ONLY.isEmpty() || ONLY.equals(trial.name())) {
                rows.add(run(trial));
                print(rows.get(rows.size() - 1));
            }
        }
        boolean failed = rows.stream().anyMatch(row -> !row.failures().isEmpty());
        System.out.printf(Locale.ROOT, "seed %d, share %s: %s%n", SEED, SHARE, failed ? "FAILED" : "no failure");
        System.exit(failed ? 1 : 0);
    }

    private static Row run(Trial trial) throws IOException {
        int count = Math.max(1, (int) Math.round(trial.count() * SHARE));
        List<String> failures = new ArrayList<>();
        List<String> told = new ArrayList<>();
        long begun = System.nanoTime();
        for (long seed = SEED; seed < SEED + count; seed++) {
            Path folder = Files.createTempDirectory("slugpeak-faults");
            try {
                String word = trial.attempt(new SplittableRandom(seed), folder);
                if (!word.isEmpty() && !told.contains(word)) {
                    told.add(word);
                }
            } catch (Exception | AssertionError | StackOverflowError | OutOfMemoryError failure) {
                failures.add(
                        "-Dfaults.only=" + trial.name() + " -Dfaults.seed=" + seed + " -Dfaults.share=0: " + failure);
            } finally {
                delete(folder);
            }
        }
        return new Row(trial.name(), count, failures, told, (System.nanoTime() - begun) / 1e9);
    }

    private static void print(Row row) {
        System.out.printf(
                Locale.ROOT,
                "%-22s tried %7d  failed %5d  %7.1f s%n",
                row.name(),
                row.tried(),
                row.failures().size(),
                row.seconds());
        row.told().stream().limit(3).forEach(word -> System.out.println("    " + word));
        row.failures().stream().limit(3).forEach(failure -> System.out.println("    again with " + failure));
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(each);
            }
        }
    }
}
