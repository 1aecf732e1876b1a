package org.slugpeak.core.peak.bench;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.slugpeak.core.peak.Hint;
import org.slugpeak.core.peak.PeakFinder;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.reading.Condition;

/** Hours of noise about nothing, with a new adjuster every ten minutes: whatever is told of a peak is wrong. */
final class Alone extends Ear {

    private static final double[] RATES = {2, 5, 10, 50, 200};
    private static final double EVERY_SECONDS = 600;
    private static final int SEEDS_OF_A_KIND = 10_000;
    private static final int SEEDS_OF_A_RATE = 1_000;
    private static final long OFFSET = 7_000_000;
    /** So that the sum of the octaves of 1/f noise is about as large as the others. */
    private static final double OF_OCTAVE = 0.3;

    /** What was told. */
    record Count(int passed, int returned, int held, int signalGone) {

        Count plus(Count other) {
            return new Count(
                    passed + other.passed, returned + other.returned, held + other.held, signalGone + other.signalGone);
        }
    }

    private int passed;
    private int returned;
    private int held;
    private int signalGone;

    private Alone() {}

    /** Kinds of noise, of a sigma of about one. */
    static List<Kind> kinds() {
        return List.of(
                new Kind("white", Disturbance.white(1)),
                new Kind("relaxing in 0.05 s", relaxing(0.05)),
                new Kind("relaxing in 0.2 s", relaxing(0.2)),
                new Kind("relaxing in 1 s", relaxing(1)),
                new Kind("relaxing in 5 s", relaxing(5)),
                new Kind("1/f", (random, rate) -> {
                    Flicker flicker = new Flicker(OF_OCTAVE, random, rate);
                    return (seconds, level) -> level + flicker.read(seconds, 1) - 1;
                }));
    }

    /** White noise behind a resistor and a capacitor, as the line of an automatic gain control has it. */
    private static Disturbance.Maker relaxing(double constantSeconds) {
        return (random, rate) -> {
            double keeps = Math.exp(-1 / (rate * constantSeconds));
            double[] noise = {random.nextGaussian()};
            return (seconds, level) -> {
                noise[0] = keeps * noise[0] + Math.sqrt(1 - keeps * keeps) * random.nextGaussian();
                return level + noise[0];
            };
        };
    }

    /**
     * Reads noise for a time.
     *
     * @param digit last digit of the meter, in sigma; 0 for none
     */
    static Count of(Kind kind, double digit, double rate, double lastsSeconds, long seed, Seek seek) {
        Alone told = new Alone();
        PeakFinder finder = PeakFinder.create(PeakSettings.defaults().withSeek(seek), told);
        Disturbance.Maker maker = digit > 0 ? Disturbance.both(kind.maker(), Disturbance.rounded(digit)) : kind.maker();
        Disturbance noise = maker.make(new SplittableRandom(seed), rate);
        long readings = Math.round(lastsSeconds * rate);
        long everyReadings = Math.round(EVERY_SECONDS * rate);
        for (long i = 0; i < readings; i++) {
            if (i % everyReadings == 0) {
                finder.restart();
            }
            finder.accept(Math.round(1e9 * i / rate), noise.read(i / rate, 0), Condition.OK);
        }
        return new Count(told.passed, told.returned, told.held, told.signalGone);
    }

    static void print(Options options) {
        int hours = (int) options.number("hours", 1);
        long first = Seeds.ofWord(options.word("seeds", "development")).first() + OFFSET;
        System.out.printf(
                Locale.ROOT,
                "%nNoise about nothing, %d h of each, %s seeds: passed, returned, held%n",
                hours,
                options.word("seeds", "development"));
        for (int kind = 0; kind < kinds().size(); kind++) {
            for (int digit = 0; digit < 2; digit++) {
                System.out.printf("%-20s %s", kinds().get(kind).name(), digit > 0 ? "digit 1 sigma" : "             ");
                for (int rate = 0; rate < RATES.length; rate++) {
                    long seed = first + (2L * kind + digit) * SEEDS_OF_A_KIND + (long) rate * SEEDS_OF_A_RATE;
                    System.out.print("  " + told(kinds().get(kind), digit, RATES[rate], hours, seed));
                }
                System.out.println();
            }
        }
    }

    private static String told(Kind kind, int digit, double rate, int hours, long seed) {
        Count sum = IntStream.range(0, hours)
                .parallel()
                .mapToObj(hour -> of(kind, digit, rate, 3600, seed + hour, Seek.PEAK))
                .reduce(new Count(0, 0, 0, 0), Count::plus);
        return String.format(Locale.ROOT, "%4.0f/s %d %d %d", rate, sum.passed(), sum.returned(), sum.held());
    }

    @Override
    public void passed(long tNanos, double best, long bestAtNanos, double dropDb) {
        passed++;
    }

    @Override
    public void returned(long tNanos, double value, double lossDb) {
        returned++;
    }

    @Override
    public void held(long tNanos, double value, double lossDb) {
        held++;
    }

    @Override
    public void hint(long tNanos, Hint hint, double amount) {
        signalGone += hint == Hint.SIGNAL_GONE ? 1 : 0;
    }
}
