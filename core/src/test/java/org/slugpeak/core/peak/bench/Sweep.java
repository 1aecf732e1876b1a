package org.slugpeak.core.peak.bench;

import static org.slugpeak.core.peak.bench.Family.IF_SLUG;
import static org.slugpeak.core.peak.bench.Family.TRIMMER;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A kind of straight travel over the top, with noise whose law is known.
 *
 * @param group kinds that are summed up together
 * @param family curve, speed, rate and times of the readings
 * @param noise what spoils them
 * @param law the same, as the observer knows it
 */
record Sweep(String group, Family family, Disturbance.Maker noise, Evidence.Law law) {

    /** White noise of a usual meter, and of a bad one. */
    private static final double LOW = 0.0035;

    private static final double HIGH = 0.02;
    private static final double QUIET = 0.0005;

    /**
     * Every kind; at 2 readings a second a trimmer goes half a half-width from one to the next, and the finder asks for slower turning: a
     * group by itself. New kinds go to the end, since the place of a kind is in its seeds.
     */
    static List<Sweep> all() {
        List<Sweep> sweeps = new ArrayList<>();
        for (double[] rates : new double[][] {{2, 5}, {10, 20}, {50, 100}, {200, 1000}}) {
            for (double rate : rates) {
                String group = String.format(Locale.ROOT, "white %.0f-%.0f/s", rates[0], rates[1]);
                for (double sigma : new double[] {LOW, HIGH}) {
                    String name = String.format(Locale.ROOT, "%.0f/s %.2f %%", rate, 100 * sigma);
                    sweeps.add(white(group, slug(name, rate, Family.Law.CLEAN), sigma));
                    String sharp = rate == 2 ? "white, trimmer too fast" : group;
                    sweeps.add(white(sharp, trimmer(name, rate, Family.Law.CLEAN), sigma));
                }
            }
        }
        sweeps.add(digits(slug("3/s digit 0.1 %", 3, Family.Law.CLEAN), 0.0005, 0.001));
        sweeps.add(digits(slug("2/s digit 0.3 %", 2, Family.Law.CLEAN), 0.001, 0.003));
        sweeps.add(digits(trimmer("5/s digit 1 %", 5, Family.Law.CLEAN), 0.002, 0.01));
        sweeps.add(hum(slug("50/s beat 1 % 1.3 Hz", 50, Family.Law.CLEAN), 0.01, 1.3));
        sweeps.add(hum(slug("50/s beat 0.5 % 0.4 Hz", 50, Family.Law.CLEAN), 0.005, 0.4));
        sweeps.add(hum(trimmer("20/s beat 1 % 3.1 Hz", 20, Family.Law.CLEAN), 0.01, 3.1));
        Family.Law irregular = Family.Law.CLEAN.irregular(0.8, 0.1);
        sweeps.add(white("irregular", slug("30/s irregular", 30, irregular), LOW));
        sweeps.add(white("irregular", trimmer("20/s irregular", 20, irregular), LOW));
        sweeps.add(white("irregular", slug("5/s irregular", 5, irregular), LOW));
        for (double rate : new double[] {5, 50}) {
            for (double sigma : new double[] {0.0005, 0.002}) {
                String name = String.format(Locale.ROOT, "%.0f/s 1/f %.2f %%", rate, 100 * sigma);
                sweeps.add(flicker(slug(name, rate, Family.Law.CLEAN), sigma));
            }
        }
        return sweeps;
    }

    static Family slug(String name, double rate, Family.Law times) {
        return new Family("slug " + name, IF_SLUG, 40, rate, 0, times, Family.Habit.PLAIN);
    }

    private static Family trimmer(String name, double rate, Family.Law times) {
        return new Family("trimmer " + name, TRIMMER, 25, rate, 0, times, Family.Habit.PLAIN);
    }

    private static Sweep white(String group, Family family, double sigma) {
        return new Sweep(group, family, Disturbance.white(sigma), Evidence.white(sigma));
    }

    private static Sweep digits(Family family, double sigma, double digit) {
        return new Sweep(
                "last digit, slow",
                family,
                Disturbance.both(Disturbance.white(sigma), Disturbance.rounded(digit)),
                Evidence.rounded(sigma, digit));
    }

    private static Sweep hum(Family family, double part, double hertz) {
        return new Sweep(
                "hum beat",
                family,
                Disturbance.both(Disturbance.tone(part, hertz), Disturbance.white(LOW)),
                Coloured.of(LOW, Coloured.tone(part, hertz)));
    }

    static Sweep flicker(Family family, double sigma) {
        return new Sweep(
                "1/f",
                family,
                Disturbance.both(Flicker.ofOctave(sigma), Disturbance.white(QUIET)),
                Coloured.of(QUIET, Coloured.flicker(sigma, family.rate())));
    }

    /** Readings that come in a second on average. */
    double readingsPerSecond() {
        return family.rate() * (1 - family.law().dropOuts());
    }
}
