package org.slugpeak.core.peak.bench;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Runs families and prints what came of them. */
final class Table {

    private Table() {}

    static List<Run.Outcome> runs(Family family, long firstSeed, int seeds, Watcher.Maker maker) {
        return IntStream.range(0, seeds)
                .parallel()
                .mapToObj(i -> Run.of(family, firstSeed + i, maker))
                .toList();
    }

    static double quantile(DoubleStream values, double part) {
        double[] sorted = values.filter(v -> !Double.isNaN(v)).sorted().toArray();
        if (sorted.length == 0) {
            return Double.NaN;
        }
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(part * (sorted.length - 1)))];
    }

    static String line(String name, List<Run.Outcome> runs) {
        long good = runs.stream().filter(r -> r.held() && r.lossDb() <= 0.5).count();
        double falsePasses = runs.stream().mapToInt(Run.Outcome::falsePasses).sum();
        return String.format(
                Locale.ROOT,
                "%-26s %5.1f %6.3f %6.3f %6.3f %6.3f %5.0f %5.2f %6.1f %7.3f",
                name,
                100.0 * good / runs.size(),
                quantile(runs.stream().mapToDouble(Run.Outcome::lossDb), 0.5),
                quantile(runs.stream().mapToDouble(Run.Outcome::lossDb), 0.95),
                quantile(runs.stream().mapToDouble(Run.Outcome::flaggedDb), 0.5),
                quantile(runs.stream().mapToDouble(Run.Outcome::flaggedDb), 0.95),
                falsePasses,
                runs.stream().mapToInt(Run.Outcome::passes).average().orElse(0),
                quantile(runs.stream().mapToDouble(Run.Outcome::seconds), 0.5),
                100 * runs.stream().mapToDouble(Run.Outcome::bestBias).average().orElse(0));
    }

    static final String HEAD = String.format(
            Locale.ROOT,
            "%-26s %5s %6s %6s %6s %6s %5s %5s %6s %7s",
            "family",
            "good%",
            "loss50",
            "loss95",
            "flag50",
            "flag95",
            "false",
            "passes",
            "held s",
            "bias %");
}
