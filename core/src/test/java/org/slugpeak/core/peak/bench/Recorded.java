package org.slugpeak.core.peak.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A recording of an instrument at rest, played on a level in proportion to it: the text file has one number a line, at an even rate; blank lines
 * and what follows # are left out. It begins anywhere and runs forwards and backwards by turns, so that it has no seam. A reading is the mean over its
 * own time, as of a meter that averages.
 */
final class Recorded implements Disturbance {

    private final double[] sums;
    private final double samplesPerSecond;
    private final double samplesPerReading;
    private final double start;
    private final double mean;

    private Recorded(double[] sums, double samplesPerSecond, double rate, SplittableRandom random) {
        this.sums = sums;
        this.samplesPerSecond = samplesPerSecond;
        this.samplesPerReading = Math.max(1, samplesPerSecond / rate);
        this.start = random.nextDouble(2.0 * (sums.length - 1));
        this.mean = sums[sums.length - 1] / (sums.length - 1);
    }

    /**
     * Reads a recording.
     *
     * @param file one number a line
     * @param samplesPerSecond its rate
     * @throws IOException if the file cannot be read
     * @throws IllegalArgumentException for a line that is no finite number, for fewer than two, or for a mean of 0
     */
    static Maker of(Path file, double samplesPerSecond) throws IOException {
        List<String> lines = Files.readAllLines(file);
        double[] values = lines.stream()
                .map(line -> line.replaceAll("#.*", "").strip())
                .filter(line -> !line.isEmpty())
                .mapToDouble(line -> number(line, file))
                .toArray();
        if (values.length < 2 || Arrays.stream(values).sum() == 0) {
            throw new IllegalArgumentException(file + " holds no readings of a level; write one number a line");
        }
        double[] sums = new double[values.length + 1];
        for (int i = 0; i < values.length; i++) {
            sums[i + 1] = sums[i] + values[i];
        }
        return (random, rate) -> new Recorded(sums, samplesPerSecond, rate, random);
    }

    private static double number(String line, Path file) {
        try {
            double value = Double.parseDouble(line);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(file + ": '" + line + "' is no number; write one a line", e);
        }
        throw new IllegalArgumentException(file + ": " + line + " is not finite; leave it out");
    }

    @Override
    public double read(double seconds, double level) {
        double at = start + seconds * samplesPerSecond;
        return level * (sum(at + samplesPerReading) - sum(at)) / samplesPerReading / mean;
    }

    /** Of all samples played before a place, straight between two. */
    private double sum(double place) {
        int samples = sums.length - 1;
        double whole = sums[samples];
        double turns = Math.floor(place / samples);
        double part = place - turns * samples;
        boolean backwards = turns % 2 != 0;
        return turns * whole + (backwards ? whole - inside(samples - part) : inside(part));
    }

    private double inside(double place) {
        int below = (int) Math.min(sums.length - 2.0, Math.floor(place));
        return sums[below] + (place - below) * (sums[below + 1] - sums[below]);
    }
}
